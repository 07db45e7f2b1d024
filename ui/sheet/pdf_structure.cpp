// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/pdf_structure.h>

#include <cmath>
#include <optional>
#include <qpdf/Buffer.hh>
#include <qpdf/Pl_Buffer.hh>
#include <qpdf/Pl_Flate.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFTokenizer.hh>
#include <utility>

namespace caprail::sheet {

namespace {

using Handle = QPDFObjectHandle;
using Token = QPDFTokenizer::Token;

/// The standard structure types (ISO 32000-1, 14.8.4).
const char* nameOf(PdfRole role) {
    switch (role) {
    case PdfRole::document:
        return "/Document";
    case PdfRole::title:
        return "/H1";
    case PdfRole::heading:
        return "/H2";
    case PdfRole::subheading:
        return "/H3";
    case PdfRole::paragraph:
        return "/P";
    case PdfRole::figure:
        return "/Figure";
    case PdfRole::table:
        return "/Table";
    case PdfRole::row:
        return "/TR";
    case PdfRole::headCell:
        return "/TH";
    case PdfRole::cell:
        return "/TD";
    }
    return "/P";
}

/// A page's content with marked content in place of the marks. `sequences()` are the elements of its marked content, by
/// their numbers (MCID).
class MarkedContent : public Handle::TokenFilter {
public:
    explicit MarkedContent(const std::vector<PdfElement>& elements) : m_elements(elements) {}

    void handleToken(const Token& token) override {
        if (!std::exchange(m_isBegun, true)) {
            write("/Artifact BMC\n");
        }
        const auto type = token.getType();
        if (type == QPDFTokenizer::tt_inline_image) {
            flush();
            writeToken(token);
            return;
        }
        m_waiting.push_back(token);
        if (type != QPDFTokenizer::tt_word) {
            if (type != QPDFTokenizer::tt_space && type != QPDFTokenizer::tt_comment) {
                const bool isNumber = type == QPDFTokenizer::tt_integer || type == QPDFTokenizer::tt_real;
                // In whatever language the desktop writes numbers.
                m_numbers.push_back(isNumber ? QByteArray::fromStdString(token.getValue()).toDouble() : std::nan(""));
            }
            return;
        }
        takeOperator(token.getValue());
    }
    void handleEOF() override {
        flush();
        write(m_isBegun ? "\nEMC\n" : "");
    }

    [[nodiscard]] const std::vector<std::size_t>& sequences() const { return m_sequences; }

private:
    struct Mark {
        int which;
        std::size_t element;
    };
    /// A mark is "x y m x′ y l S": x says which of the two, y which element.
    void takeOperator(const std::string& name) {
        if (name == "m" && m_numbers.size() == 2 && (m_numbers[0] == tagBegins || m_numbers[0] == tagEnds)) {
            m_mark = {static_cast<int>(m_numbers[0]), static_cast<std::size_t>(std::abs(m_numbers[1]))};
        } else if (m_mark && name == "S") {
            m_waiting.clear();
            put(*m_mark);
            m_mark.reset();
        } else if (!m_mark || name != "l") {
            flush();
        }
        m_numbers.clear();
    }
    void put(const Mark& mark) {
        if (mark.which == tagEnds) {
            write("\nEMC\n/Artifact BMC\n");
            return;
        }
        const PdfElement& element = m_elements.at(mark.element);
        write("\nEMC\n" + std::string(nameOf(element.role)) + " <</MCID " + std::to_string(m_sequences.size()) +
              ">> BDC\n");
        m_sequences.push_back(mark.element);
    }
    void flush() {
        for (const Token& token : m_waiting) {
            writeToken(token);
        }
        m_waiting.clear();
        m_mark.reset();
    }

    const std::vector<PdfElement>& m_elements;
    bool m_isBegun = false;
    std::vector<Token> m_waiting;  ///< since the last operator, or since a mark began
    std::vector<double> m_numbers; ///< the operands since the last operator
    std::optional<Mark> m_mark;
    std::vector<std::size_t> m_sequences;
};

/// Filters a page's content at once, so that its sequences are known.
std::vector<std::size_t> markContent(QPDF& document, Handle page, const std::vector<PdfElement>& elements) {
    MarkedContent filter(elements);
    Pl_Buffer buffer("page");
    Pl_Flate flate("page", &buffer, Pl_Flate::a_deflate);
    page.filterPageContents(&filter, &flate);
    flate.finish();
    Handle content = document.newStream();
    content.replaceStreamData(buffer.getBufferSharedPointer(), Handle::newName("/FlateDecode"), Handle::newNull());
    page.replaceKey("/Contents", content);
    return filter.sequences();
}

Handle elementObject(QPDF& document, const PdfElement& element) {
    Handle object = document.makeIndirectObject(Handle::newDictionary());
    object.replaceKey("/Type", Handle::newName("/StructElem"));
    object.replaceKey("/S", Handle::newName(nameOf(element.role)));
    object.replaceKey("/K", Handle::newArray());
    if (!element.words.isEmpty()) {
        object.replaceKey(element.role == PdfRole::figure ? "/Alt" : "/ActualText",
                          Handle::newUnicodeString(element.words.toStdString()));
    }
    if (element.role == PdfRole::headCell) {
        Handle scope = Handle::newDictionary();
        scope.replaceKey("/O", Handle::newName("/Table"));
        scope.replaceKey("/Scope", Handle::newName("/Column"));
        object.replaceKey("/A", scope);
    }
    return object;
}

} // namespace

void tagPages(QPDF& document, const std::vector<PdfElement>& elements, const QString& language) {
    Handle root = document.makeIndirectObject(Handle::newDictionary());
    root.replaceKey("/Type", Handle::newName("/StructTreeRoot"));
    std::vector<Handle> objects;
    for (const PdfElement& element : elements) {
        objects.push_back(elementObject(document, element));
        Handle parent = objects.size() == 1 ? root : objects[element.parent];
        objects.back().replaceKey("/P", parent);
        if (objects.size() > 1) {
            parent.getKey("/K").appendItem(objects.back());
        }
    }
    root.replaceKey("/K", objects.front());
    Handle parents = Handle::newArray();
    int number = 0;
    for (QPDFPageObjectHelper& helper : QPDFPageDocumentHelper(document).getAllPages()) {
        Handle page = helper.getObjectHandle();
        Handle held = Handle::newArray();
        int sequence = 0;
        for (const std::size_t element : markContent(document, page, elements)) {
            Handle reference = Handle::newDictionary();
            reference.replaceKey("/Type", Handle::newName("/MCR"));
            reference.replaceKey("/Pg", page);
            reference.replaceKey("/MCID", Handle::newInteger(sequence++));
            objects[element].getKey("/K").appendItem(reference);
            held.appendItem(objects[element]);
        }
        page.replaceKey("/StructParents", Handle::newInteger(number));
        parents.appendItem(Handle::newInteger(number++));
        parents.appendItem(document.makeIndirectObject(held));
    }
    Handle tree = Handle::newDictionary();
    tree.replaceKey("/Nums", parents);
    root.replaceKey("/ParentTree", document.makeIndirectObject(tree));
    root.replaceKey("/ParentTreeNextKey", Handle::newInteger(number));

    Handle catalog = document.getRoot();
    catalog.replaceKey("/StructTreeRoot", root);
    catalog.replaceKey("/Lang", Handle::newUnicodeString(language.toStdString()));
    Handle marked = Handle::newDictionary();
    marked.replaceKey("/Marked", Handle::newBool(true));
    catalog.replaceKey("/MarkInfo", marked);
    Handle preferences = Handle::newDictionary();
    preferences.replaceKey("/DisplayDocTitle", Handle::newBool(true));
    catalog.replaceKey("/ViewerPreferences", preferences);
}

} // namespace caprail::sheet
