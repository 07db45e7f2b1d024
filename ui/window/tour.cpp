// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/tour.h>

#include <QDir>
#include <QFileInfo>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QShortcut>
#include <QTemporaryDir>
#include <QVBoxLayout>
#include <algorithm>
#include <session/filled.h>
#include <stations/common/station_text.h>
#include <window/main_window.h>
#include <window/samples.h>

namespace caprail {

namespace {

constexpr int charactersWide = 34;

} // namespace

QString tourSample() {
    return QStringLiteral("moved-in-verify-round");
}

std::vector<TourPage> tourPages() {
    return {
        {Station::engine, {},
         Tour::tr("This is a V8 on the stand, in the middle of its build. On the left stand the eight stations in the order of "
                  "the work, each with its own state. Above them is the one next thing to do, with the way there. Here it is "
                  "said whose engine it is, where its caps and fasteners lie, what it is judged by, who works on it and with "
                  "which instruments."),
         Tour::tr("Ctrl+U shows every length in millimetres, and again in inches. Nothing of it changes the record.")},
        {Station::bearings, QStringLiteral("main-4"),
         Tour::tr("Journals and bores give each bearing its clearance, with what the instruments leave open. Main 4 is stale: "
                  "a fastener of its cap moved after the bore was read. The number is still there, and so is the reason why it "
                  "no longer counts. Nothing is ever erased."),
         Tour::tr("Choose main 2 and main 4 on the drawing, with the pointer or the arrow keys, and compare what is said of "
                  "them.")},
        {Station::fasteners, QStringLiteral("main-4R"),
         Tour::tr("What each group is tightened to, what each fastener was tightened to, and the verify rounds: with the "
                  "stacks off, every main-cap and rod fastener is tried again. In round 1 main 4 right moved by 5°. All that "
                  "is stale in this record comes from that one fastener."),
         Tour::tr("Go through the views above the drawing with Alt+1, Alt+2 and so on, and find where the round is shown.")},
        {Station::girdle, QStringLiteral("4L"),
         Tour::tr("The gap at each stud between rail and girdle, the kit of shims, the stacks that fill the gaps, and the "
                  "straightedge that rechecks them. The two places of cap 4 fell with its fastener. The other eight stand as "
                  "they were built."),
         Tour::tr("Type 0.7 into the field and press Enter: no gap is that wide, so it is asked back and stays in the field. "
                  "Esc empties it. F9 shows the same field in figures for the engine stand; F9 again goes back.")},
        {Station::trialFit, {},
         Tour::tr("With the girdle on its stacks: does everything clear, does the crank turn? It was done once. It is "
                  "stale and locked until cap 4 is right again, and says what holds it."),
         Tour::tr("Press a reason in the list of what holds the gate: it leads to its place. Come back with Ctrl+5.")},
        {Station::pickup, {},
         Tour::tr("Pan depth, gasket, plate and pickup, each read twice, give the room under the pickup: to scale, with its "
                  "band and what the instruments leave open. No fastener of cap 4 has to do with it, so it stands."),
         Tour::tr("Choose “Why” beside the value: it shows which reading leaves most of it open.")},
        {Station::closing, {},
         Tour::tr("What hides everything else comes last: shims counted back, stacks, bead, nuts, crank, pan, and the sign-off. "
                  "It opens when nothing is out, open or stale, and every fastener has held in a round of its own."),
         Tour::tr("Ctrl+Enter goes to the next thing to do, from anywhere, until there is nothing left but to sign off.")},
        {Station::history, {},
         Tour::tr("Every entry, in order, with who made it and when, each sealed to all before it. A wrong one is struck with a "
                  "reason and stays readable. File ▸ Build sheet as PDF makes what the customer gets."),
         Tour::tr("Ctrl+F, then type: moved. Ctrl+Z strikes the last entry, after asking why. This is a copy in a temporary "
                  "folder; it goes when you close its window.")},
    };
}

Tour::Tour(MainWindow& window)
    : QDockWidget(tr("Tour"), &window), m_window(window), m_pages(tourPages()), m_title(new Label), m_seen(new Label),
      m_try(new Label), m_back(new QPushButton(tr("Back  (Alt+←)"))), m_next(new QPushButton) {
    setObjectName(QStringLiteral("tour"));
    setFeatures(QDockWidget::DockWidgetClosable);
    setAllowedAreas(Qt::RightDockWidgetArea);
    m_title->setObjectName(QStringLiteral("tourTitle"));
    m_seen->setObjectName(QStringLiteral("tourSeen"));
    m_try->setObjectName(QStringLiteral("tourTry"));
    m_next->setObjectName(QStringLiteral("tourNext"));
    m_back->setObjectName(QStringLiteral("tourBack"));
    QFont large = font();
    large.setBold(true);
    large.setPointSizeF(large.pointSizeF() * 1.3);
    m_title->setFont(large);
    auto* pages = new QWidget;
    auto* column = new QVBoxLayout(pages);
    column->setSpacing(12);
    for (Label* label : {m_title, m_seen, m_try}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        column->addWidget(label);
    }
    column->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(pages);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* all = new QWidget(this);
    auto* rows = new QVBoxLayout(all);
    rows->addWidget(scroll, 1);
    rows->addWidget(m_next);
    rows->addWidget(m_back);
    auto* close = new QPushButton(tr("Close the tour  (Shift+F1)"));
    rows->addWidget(close);
    setWidget(all);
    setFixedWidth(fontMetrics().averageCharWidth() * charactersWide);
    connect(m_next, &QPushButton::clicked, this, &Tour::next);
    connect(m_back, &QPushButton::clicked, this, &Tour::back);
    connect(close, &QPushButton::clicked, this, &QDockWidget::close);
    for (const auto& [key, slot] : {std::pair{QKeySequence(Qt::ALT | Qt::Key_Right), &Tour::next},
                                    std::pair{QKeySequence(Qt::ALT | Qt::Key_Left), &Tour::back}}) {
        auto* shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WindowShortcut);
        connect(shortcut, &QShortcut::activated, this, slot);
    }
    turnTo(0);
}

void Tour::next() {
    if (m_page + 1 < m_pages.size()) {
        turnTo(m_page + 1);
    } else {
        close();
    }
}

void Tour::back() {
    if (m_page > 0) {
        turnTo(m_page - 1);
    }
}

void Tour::turnTo(std::size_t page) {
    m_page = page;
    const TourPage& shown = m_pages[page];
    m_title->setText(filled(tr("%1 of %2: %3"), page + 1, m_pages.size(), qtShown(shown.station)));
    m_seen->setText(shown.seen);
    m_try->setText(tr("Try it: %1").arg(shown.toTry));
    m_back->setEnabled(page > 0);
    m_next->setText(page + 1 < m_pages.size() ? tr("Next  (Alt+→)") : tr("Done  (Alt+→)"));
    m_window.showDestination({shown.station, shown.subject.toStdString()});
}

void MainWindow::startTour() {
    if (m_tour != nullptr) {
        m_tour->setVisible(!m_tour->isVisible());
        return;
    }
    const QStringList samples = sampleFiles();
    const auto sample = std::ranges::find_if(
        samples, [](const QString& file) { return QFileInfo(file).completeBaseName() == tourSample(); });
    if (sample == samples.end()) {
        complain(tr("The tour walks through a sample record, and it is not installed: install the program's samples again."));
        return;
    }
    auto folder = std::make_unique<QTemporaryDir>(QDir::tempPath() + QStringLiteral("/caprail-tour-XXXXXX"));
    const QString copy = folder->filePath(tr("tour") + QStringLiteral(".caprail"));
    if (const auto made = copySample(*sample, copy); !made) {
        complain(QString::fromStdString(made.error().sentence));
        return;
    }
    auto* window = m_session ? new MainWindow : this;
    window->m_tourFolder = std::move(folder);
    if (!window->openFile(copy)) {
        window->m_tourFolder.reset(); // else the next record in this window would be taken for the tour's
        return;
    }
    window->m_tour = new Tour(*window);
    window->addDockWidget(Qt::RightDockWidgetArea, window->m_tour);
    // Beside the screen as it is, where there is room for both.
    const int both = std::min(window->width() + window->m_tour->width(), window->screen()->availableGeometry().width());
    window->resize(std::max(window->width(), both), window->height());
}

} // namespace caprail
