// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <QStringList>
#include <QWidget>
#include <assessment/check.h>
#include <tables/table.h>

class QLineEdit;

namespace caprail {

class PageBrowser;

/// The pages of the manual by the names of their files, in the order of the contents: the whole job, the stations in
/// the order of the work, and what goes for all of them. They lie in resources/manual, a folder for each language.
const QStringList& manualPages();
/// The page of a station.
QString manualPage(Station station);
/// Where the manual's pages lie, the program's language first, English behind it, and its pictures.
QStringList manualFolders();

/// The manual in a window of its own beside a window of the program: contents at the left, the page, a search over all
/// pages. Everything is done by keys as well: Ctrl+F searches, Enter goes from find to find, Alt+Left and Alt+Right go
/// back and forward, Ctrl++ and Ctrl+− change the size of the text, Esc leaves.
class Manual : public QWidget {
    Q_OBJECT
public:
    /// Shows the manual of a window at a page, and from a heading of it where it has that one; it comes to the front
    /// where it is open already.
    static Manual* show(QWidget* window, const QString& page, const QString& heading = {});

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    struct Row {
        QString page;
        QString title;
        int found = 0; ///< of the words that are searched; 0: nothing is searched
    };

    explicit Manual(QWidget* window);
    QWidget* makeTools();
    void addKeys();
    void search();
    void goOn();
    void leave();
    void follow();
    void resizeText(int steps);
    [[nodiscard]] QStringList words() const;
    PageBrowser* m_pages;
    List<Row, QString>* m_contents;
    QLineEdit* m_search;
    int m_textSteps = 0; ///< larger by so many points than the text of the program
};

} // namespace caprail
