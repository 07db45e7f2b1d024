// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <QTextBrowser>
#include <map>

namespace caprail {

/// Shows the program's own pages, written in Markdown. A page or picture is asked for by the name of its file, and is
/// taken from the first of the given folders that has it; nothing else is ever read, whatever a link says. It is no
/// place for the texts of a record, which are shown letter for letter (Label).
class PageBrowser : public QTextBrowser {
    Q_OBJECT
public:
    /// The folders, the preferred one first: that of the language, that of English, that of the pictures.
    explicit PageBrowser(QStringList folders, QWidget* parent = nullptr);

    /// The page that is shown, as "girdle.md"; empty: none yet.
    [[nodiscard]] QString page() const;
    /// Shows a page from its beginning, or from the heading of these words where it has one. False: there is no such
    /// page, and the one that is shown stays.
    bool open(const QString& page, const QString& heading = {});
    /// Where a page or picture lies; empty: nowhere.
    [[nodiscard]] QString pathOf(const QString& name) const;
    /// The words of its first line.
    [[nodiscard]] QString titleOf(const QString& page) const;

    /// How often the words are found on a page, in any case of letters; 0 unless each of them is.
    [[nodiscard]] int countOf(const QString& page, const QStringList& words) const;
    /// Marks all of them on the page that is shown, and on those that are shown later; none: marks nothing.
    void mark(const QStringList& words);
    /// Goes to the next of them; false: there is none below.
    bool showNext();

protected:
    void doSetSource(const QUrl& url, QTextDocument::ResourceType type) override;
    QVariant loadResource(int type, const QUrl& url) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QString markdown(const QString& page) const;
    [[nodiscard]] const QString& plainText(const QString& page) const;
    void dress();
    void markAnew();
    void fitAnew();
    QStringList m_folders;
    QStringList m_words;
    mutable std::map<QString, QString> m_plain; ///< the words of a page, once they were asked for
    int m_widthOfPictures = 0;                  ///< pixels, as the page that is shown was laid out
};

} // namespace caprail
