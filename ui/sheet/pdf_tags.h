// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What a sheet's file tells a reader that speaks it or sets it anew: its logical structure (ISO 32000-1, 14.7
/// and 14.8). Qt's writer knows none. What is painted here says what it is; where the painter writes a tagged PDF, that
/// is taken down, and put into the file by `tagPages` (pdf_structure.h). On screen and printer it does nothing.
#include <QPdfWriter>
#include <QString>
#include <compare>
#include <cstddef>
#include <map>
#include <utility>
#include <vector>

class QPainter;

namespace caprail::sheet {

/// The standard structure types that a sheet uses.
enum class PdfRole { document, title, heading, subheading, paragraph, figure, table, row, headCell, cell };

/// Tells the parts of one element that is painted in pieces, as over two pages, from those of others; without a thing,
/// each is an element by itself. The thing must live until the file is written.
struct PdfPart {
    const void* thing = nullptr;
    std::size_t index = 0;
    friend auto operator<=>(const PdfPart&, const PdfPart&) = default;
};

struct PdfElement {
    PdfRole role = PdfRole::document;
    std::size_t parent = 0; ///< the document, number 0, is its own
    QString words;          ///< what a figure shows; of others, what they say where that is set over several lines
};

/// A writer that takes down what its painters say of what they paint.
class TaggedPdfWriter : public QPdfWriter {
public:
    explicit TaggedPdfWriter(QIODevice* device) : QPdfWriter(device), m_elements{{}}, m_open{0} {}

    /// In the order in which they are told; the first is the document.
    [[nodiscard]] const std::vector<PdfElement>& elements() const { return m_elements; }

private:
    friend class Tagged;
    std::vector<PdfElement> m_elements;
    std::vector<std::size_t> m_open; ///< from the document inwards
    std::map<std::pair<PdfRole, PdfPart>, std::size_t> m_known;
};

/// Whatever is painted while it lives is this. Tables, and rows in them, hold elements; the others hold what is
/// painted, and no elements. A head cell that is painted again, on the table's next page, is not told again.
class Tagged {
public:
    Tagged(QPainter& painter, PdfRole role, const QString& words = {}, PdfPart part = {});
    ~Tagged();
    Tagged(const Tagged&) = delete;
    Tagged& operator=(const Tagged&) = delete;

private:
    QPainter& m_painter;
    TaggedPdfWriter* m_writer; ///< none: nothing is taken down
    bool m_isMarked = false;
};

/// The two marks around what an element holds are lines far off the page, of which the file is rid again: `tagPages`
/// puts the operators of marked content in their place. Both run along this ordinate, the number of the element
/// downwards.
inline constexpr int tagBegins = -100'000, tagEnds = -200'000;

} // namespace caprail::sheet
