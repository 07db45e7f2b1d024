// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/manual.h>

#include <QCloseEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QScreen>
#include <QSettings>
#include <QShortcut>
#include <QToolButton>
#include <algorithm>
#include <session/filled.h>
#include <session/language.h>
#include <text/page_browser.h>
#include <text/plain_text.h>
#include <text/tab_order.h>
#include <window/open_windows.h>
#include <window/preferences.h>

namespace caprail {

namespace {

constexpr char sizeSetting[] = "manual/text-steps";
constexpr char placeSetting[] = "manual/geometry";
constexpr int fewestSteps = -3, mostSteps = 12; // points

/// A button with its key in its tip.
QToolButton* tool(const QString& name, const QString& text, const QKeySequence& key, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setObjectName(name);
    button->setText(text);
    button->setShortcut(key);
    button->setMinimumHeight(34); // for a glove
    button->setFocusPolicy(Qt::TabFocus);
    setTip(button, key.toString(QKeySequence::NativeText));
    return button;
}

} // namespace

const QStringList& manualPages() {
    static const QStringList pages = [] {
        QStringList list{QStringLiteral("job.md")};
        for (const auto& station : allWords<Station>()) {
            list << manualPage(station.value);
        }
        for (const char* page : {"marks", "keys", "gauges", "sheet", "signing", "shop", "files", "command-line"}) {
            list << QLatin1String(page) + QStringLiteral(".md");
        }
        return list;
    }();
    return pages;
}

QString manualPage(Station station) {
    switch (station) {
    case Station::engine:
        return QStringLiteral("engine.md");
    case Station::bearings:
        return QStringLiteral("bearings.md");
    case Station::fasteners:
        return QStringLiteral("fasteners.md");
    case Station::girdle:
        return QStringLiteral("girdle.md");
    case Station::trialFit:
        return QStringLiteral("trial-fit.md");
    case Station::pickup:
        return QStringLiteral("pickup.md");
    case Station::closing:
        return QStringLiteral("closing.md");
    case Station::history:
        break;
    }
    return QStringLiteral("history.md");
}

QStringList manualFolders() {
    const QString all = QStringLiteral(":/caprail/manual/");
    return {all + spokenLanguage(), all + languages().front(), all + QStringLiteral("pictures")};
}

Manual* Manual::show(QWidget* window, const QString& page, const QString& heading) {
    auto* manual = window->findChild<Manual*>(QString(), Qt::FindDirectChildrenOnly);
    if (manual == nullptr) {
        manual = new Manual(window);
    }
    manual->QWidget::show();
    bringToFront(*manual);
    if (!manual->m_search->text().isEmpty()) {
        manual->m_search->clear(); // else the page that is asked for may not be among those that are listed
    }
    manual->m_pages->open(page, heading);
    manual->m_pages->setFocus();
    return manual;
}

Manual::Manual(QWidget* window)
    : QWidget(window, Qt::Window), m_pages(new PageBrowser(manualFolders(), this)), m_search(new QLineEdit(this)) {
    setObjectName(QStringLiteral("manual"));
    setWindowTitle(tr("Manual — Caprail"));
    m_contents = new List<Row, QString>(tr("Contents"), &Row::page,
                                        {{.text =
                                              [](const Row& row) {
                                                  return row.found == 0
                                                             ? row.title
                                                             : filled(QStringLiteral("%1  (%2)"), row.title, row.found);
                                              }}},
                                        this);
    m_contents->setObjectName(QStringLiteral("contents"));
    m_contents->setEmptyText(tr("No page holds all of these words."));
    m_contents->setLineHeight(fontMetrics().lineSpacing() + 12); // for a finger
    m_pages->setObjectName(QStringLiteral("page"));
    m_pages->setAccessibleName(tr("Page of the manual"));
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setAccessibleName(tr("Search all pages"));
    m_search->setPlaceholderText(tr("Search all pages"));
    m_search->setClearButtonEnabled(true);
    auto* row = new QHBoxLayout;
    row->addWidget(m_contents);
    row->addWidget(m_pages, 1);
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeTools());
    column->addLayout(row, 1);
    connect(m_search, &QLineEdit::textChanged, this, &Manual::search);
    connect(m_search, &QLineEdit::returnPressed, this, &Manual::goOn);
    connect(m_contents, &ListView::lineSelected, this, [this](int line) {
        if (const Row* chosen = m_contents->at(line); chosen != nullptr && chosen->page != m_pages->page()) {
            m_pages->open(chosen->page);
        }
    });
    connect(m_pages, &PageBrowser::historyChanged, this, &Manual::follow);
    addKeys();
    orderAsRead(*this);
    search();
    constexpr int forCount = 8; // characters: how often words were found stands behind a title
    int widest = 0;
    for (const Row& listed : m_contents->rows()) {
        widest = std::max(widest, fontMetrics().horizontalAdvance(listed.title));
    }
    m_contents->setFixedWidth(widest + forCount * fontMetrics().averageCharWidth());
    resizeText(QSettings().value(sizeSetting).toInt());
    resize(1180, 820);
    restoreGeometry(QSettings().value(placeSetting).toByteArray());
    resize(size().boundedTo(screen()->availableSize()));
}

QWidget* Manual::makeTools() {
    auto* tools = new QWidget(this);
    auto* row = new QHBoxLayout(tools);
    row->setContentsMargins(0, 0, 0, 0);
    auto* back = tool(QStringLiteral("back"), tr("Back"), Qt::ALT | Qt::Key_Left, tools);
    auto* forward = tool(QStringLiteral("forward"), tr("Forward"), Qt::ALT | Qt::Key_Right, tools);
    auto* smaller = tool(QStringLiteral("smaller"), tr("Smaller text"), QKeySequence::ZoomOut, tools);
    auto* larger = tool(QStringLiteral("larger"), tr("Larger text"), QKeySequence::ZoomIn, tools);
    back->setEnabled(false);
    forward->setEnabled(false);
    connect(m_pages, &PageBrowser::backwardAvailable, back, &QWidget::setEnabled);
    connect(m_pages, &PageBrowser::forwardAvailable, forward, &QWidget::setEnabled);
    connect(back, &QToolButton::clicked, m_pages, &PageBrowser::backward);
    connect(forward, &QToolButton::clicked, m_pages, &PageBrowser::forward);
    connect(smaller, &QToolButton::clicked, this, [this] { resizeText(-1); });
    connect(larger, &QToolButton::clicked, this, [this] { resizeText(1); });
    row->addWidget(m_search, 1);
    for (QToolButton* button : {back, forward, smaller, larger}) {
        row->addWidget(button);
    }
    return tools;
}

void Manual::addKeys() {
    auto* find = new QShortcut(QKeySequence::Find, this);
    connect(find, &QShortcut::activated, m_search, [this] {
        m_search->setFocus();
        m_search->selectAll();
    });
    auto* escape = new QShortcut(Qt::Key_Escape, this);
    connect(escape, &QShortcut::activated, this, &Manual::leave);
}

QStringList Manual::words() const {
    return m_search->text().simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

/// Lists the pages that hold all words, or all pages.
void Manual::search() {
    const QStringList wanted = words();
    std::vector<Row> rows;
    for (const QString& page : manualPages()) {
        const int found = m_pages->countOf(page, wanted);
        if (found > 0 || wanted.isEmpty()) {
            rows.push_back({page, m_pages->titleOf(page), found});
        }
    }
    m_contents->put(std::move(rows));
    m_pages->mark(wanted);
    follow();
}

/// To the next find on this page, then on the next page that is listed, and from the last one to the first.
void Manual::goOn() {
    const int here = m_contents->lineOf(m_pages->page());
    if (m_contents->count() == 0 || words().isEmpty() || (here >= 0 && m_pages->showNext())) {
        return;
    }
    m_pages->open(m_contents->at((here + 1) % m_contents->count())->page);
    m_pages->moveCursor(QTextCursor::Start);
    m_pages->showNext();
}

void Manual::leave() {
    m_search->text().isEmpty() ? void(close()) : m_search->clear();
}

/// The contents show where the page lies.
void Manual::follow() {
    m_contents->select(m_pages->page());
}

void Manual::resizeText(int steps) {
    const int wanted = std::clamp(m_textSteps + steps, fewestSteps, mostSteps);
    m_pages->zoomIn(wanted - m_textSteps);
    m_textSteps = wanted;
    keepSetting(QString::fromLatin1(sizeSetting), m_textSteps);
}

void Manual::closeEvent(QCloseEvent* event) {
    keepSetting(QString::fromLatin1(placeSetting), saveGeometry());
    QWidget::closeEvent(event);
}

} // namespace caprail
