// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/page_browser.h>

#include <QEvent>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextTable>
#include <QTimer>
#include <algorithm>

namespace caprail {

namespace {

/// Any of the words, in any case of letters.
QRegularExpression anyOf(const QStringList& words) {
    QStringList escaped;
    for (const QString& word : words) {
        escaped << QRegularExpression::escape(word);
    }
    return QRegularExpression(escaped.join(QLatin1Char('|')), QRegularExpression::CaseInsensitiveOption);
}

/// Between two colours; `share` from 0 (the first) to 1 (the second).
QColor between(const QColor& one, const QColor& other, double share) {
    const auto mixed = [share](int a, int b) { return static_cast<int>(a + share * (b - a) + 0.5); };
    return {mixed(one.red(), other.red()), mixed(one.green(), other.green()), mixed(one.blue(), other.blue())};
}

} // namespace

PageBrowser::PageBrowser(QStringList folders, QWidget* parent) : QTextBrowser(parent), m_folders(std::move(folders)) {
    constexpr int margin = 18; // pixels
    document()->setDocumentMargin(margin);
    setFrameShape(NoFrame);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // else its coming and going would change the room for pictures
    connect(this, &QTextBrowser::sourceChanged, this, &PageBrowser::dress);
    connect(this, &QTextBrowser::sourceChanged, this, &PageBrowser::markAnew);
}

QString PageBrowser::page() const {
    return source().fileName();
}

QString PageBrowser::pathOf(const QString& name) const {
    for (const QString& folder : m_folders) {
        const QString path = folder + QLatin1Char('/') + name;
        if (!name.isEmpty() && QFileInfo(path).isFile()) {
            return path;
        }
    }
    return {};
}

QString PageBrowser::markdown(const QString& page) const {
    QFile file(pathOf(page));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QString PageBrowser::titleOf(const QString& page) const {
    return markdown(page).section(QLatin1Char('\n'), 0, 0).remove(QLatin1Char('#')).trimmed();
}

const QString& PageBrowser::plainText(const QString& page) const {
    const auto [at, isNew] = m_plain.try_emplace(page);
    if (isNew) {
        QTextDocument words;
        words.setMarkdown(markdown(page));
        at->second = words.toPlainText();
    }
    return at->second;
}

bool PageBrowser::open(const QString& page, const QString& heading) {
    if (pathOf(page).isEmpty()) {
        return false;
    }
    setSource(QUrl(page), QTextDocument::MarkdownResource);
    verticalScrollBar()->setValue(0);
    for (QTextBlock block = document()->begin(); !heading.isEmpty() && block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0 && block.text().trimmed() == heading) {
            moveCursor(QTextCursor::End); // from below, so that the heading comes to stand at the top
            setTextCursor(QTextCursor(block));
            verticalScrollBar()->setValue(verticalScrollBar()->value() + cursorRect().top());
            break;
        }
    }
    return true;
}

int PageBrowser::countOf(const QString& page, const QStringList& words) const {
    if (words.isEmpty()) {
        return 0; // no page is read for it: the manual opens with an empty search
    }
    const QString& text = plainText(page);
    const bool hasAll =
        std::ranges::all_of(words, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
    return hasAll ? static_cast<int>(text.count(anyOf(words))) : 0;
}

/// What Markdown says nothing of: cautions, which stand as quotations, on a ground of their own, and room in tables.
void PageBrowser::dress() {
    constexpr int room = 4; // pixels
    const QColor ground = palette().color(QPalette::Base);
    const QColor apart = between(ground, palette().color(QPalette::Highlight), 0.18);
    const QColor line = between(ground, palette().color(QPalette::Text), 0.3);
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().intProperty(QTextFormat::BlockQuoteLevel) > 0) {
            QTextBlockFormat format;
            format.setBackground(apart);
            format.setLeftMargin(2.0 * room);
            format.setRightMargin(2.0 * room);
            QTextCursor(block).mergeBlockFormat(format);
        }
    }
    for (QTextFrame* frame : document()->rootFrame()->childFrames()) {
        if (auto* table = qobject_cast<QTextTable*>(frame)) {
            QTextTableFormat format = table->format();
            format.setBorderCollapse(true);
            format.setCellPadding(room);
            format.setBorderBrush(line);
            format.setBorder(1);
            format.setBottomMargin(2.0 * room);
            table->setFormat(format);
        }
    }
}

void PageBrowser::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !page().isEmpty()) {
        dress();
        markAnew();
    }
}

void PageBrowser::mark(const QStringList& words) {
    m_words = words;
    moveCursor(QTextCursor::Start);
    markAnew();
}

void PageBrowser::markAnew() {
    QList<ExtraSelection> found;
    const QRegularExpression wanted = anyOf(m_words);
    for (QTextCursor at = document()->find(wanted); !m_words.isEmpty() && !at.isNull();
         at = document()->find(wanted, at)) {
        QTextCharFormat format;
        format.setBackground(palette().highlight());
        format.setForeground(palette().highlightedText());
        found << ExtraSelection{at, format};
    }
    setExtraSelections(found);
}

bool PageBrowser::showNext() {
    const QTextCursor next = m_words.isEmpty() ? QTextCursor() : document()->find(anyOf(m_words), textCursor());
    if (next.isNull()) {
        return false;
    }
    setTextCursor(next);
    return true;
}

void PageBrowser::doSetSource(const QUrl& url, QTextDocument::ResourceType) {
    // A link leads to a page by its name, and to nothing outside the folders.
    if (!pathOf(url.fileName()).isEmpty()) {
        m_widthOfPictures = viewport()->width();
        QTextBrowser::doSetSource(QUrl(url.fileName()), QTextDocument::MarkdownResource);
    }
}

QVariant PageBrowser::loadResource(int type, const QUrl& url) {
    if (type == QTextDocument::MarkdownResource) {
        return markdown(url.fileName());
    }
    if (type != QTextDocument::ImageResource) {
        return {};
    }
    const QString path = pathOf(url.fileName());
    if (path.isEmpty()) {
        return {};
    }
    const QImage picture(path);
    const int room = viewport()->width() - 2 * static_cast<int>(document()->documentMargin());
    return picture.width() <= room || room < 1 ? picture : picture.scaledToWidth(room, Qt::SmoothTransformation);
}

void PageBrowser::resizeEvent(QResizeEvent* event) {
    QTextBrowser::resizeEvent(event);
    if (!page().isEmpty() && viewport()->width() != m_widthOfPictures) {
        QTimer::singleShot(0, this, &PageBrowser::fitAnew);
    }
}

/// Qt keeps the pictures of a page as large as they were loaded.
void PageBrowser::fitAnew() {
    if (viewport()->width() == m_widthOfPictures) {
        return;
    }
    m_widthOfPictures = viewport()->width();
    const QScrollBar* bar = verticalScrollBar();
    const double share = bar->maximum() > 0 ? static_cast<double>(bar->value()) / bar->maximum() : 0;
    reload();
    verticalScrollBar()->setValue(static_cast<int>(share * verticalScrollBar()->maximum()));
}

} // namespace caprail
