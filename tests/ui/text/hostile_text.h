// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the tests of hostile text share: records whose every text is an attack, a trap for files that should not be
/// opened, and a walk over everything that a window can show.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QTemporaryDir>
#include <QTextEdit>
#include <QTimer>
#include <atomic>
#include <fcntl.h>
#include <gtest/gtest.h>
#include <ledger/kinds.h>
#include <ledger/ledger.h>
#include <set>
#include <sys/stat.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <thread>
#include <unistd.h>

namespace caprail::hostile {

/// A pipe that nobody writes to: whoever opens it to read would wait for ever, as a text that is taken for markup and
/// names it makes the program do. This one notices the reader, counts it and lets it go.
class Bait {
public:
    Bait() {
        EXPECT_EQ(::mkfifo(path().toLocal8Bit().constData(), 0600), 0);
        m_thread = std::thread([this, name = path().toStdString()] {
            while (!m_isOver) {
                if (const int writer = ::open(name.c_str(), O_WRONLY | O_NONBLOCK); writer >= 0) {
                    ++m_taken; // it opens only when somebody reads
                    ::close(writer);
                }
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
            }
        });
    }
    Bait(const Bait&) = delete;
    Bait& operator=(const Bait&) = delete;
    ~Bait() {
        m_isOver = true;
        m_thread.join();
    }
    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("bait.png")); }
    [[nodiscard]] int taken() const { return m_taken; }

private:
    QTemporaryDir m_folder;
    std::atomic<bool> m_isOver = false;
    std::atomic<int> m_taken = 0;
    std::thread m_thread;
};

struct Attack {
    const char* name;
    QString text;
};

inline std::vector<Attack> attacks(const QString& bait) {
    return {{"opens_a_file", QStringLiteral("<img src=\"file://%1\">").arg(bait)},
            {"paints_a_verdict", QStringLiteral("<b>GOOD</b><br><hr>")},
            {"entity", QStringLiteral("&amp;&lt;b&gt;")},
            {"mnemonic", QStringLiteral("&File")},
            {"place_of_a_sentence", QStringLiteral("%1 %2 %3 %L1 %n")},
            {"title_mark", QStringLiteral("[*]")},
            {"turned_around", QStringLiteral("\u202Edoog")},
            {"very_long", QString(2'000, QLatin1Char('W'))},
            {"combining", QStringLiteral("e") + QString(900, QChar(0x0301))}};
}

/// The ledger with the attack in front of every free text of every entry. A text that a kind demands to be a code or a
/// number stays; the same text becomes the same other text everywhere, so that names still fit. A text that takes long
/// to be laid out stands in the first entry of each kind only: it is about whether, not about how many.
inline Ledger poisoned(const Ledger& ledger, const QString& attack) {
    const std::string poison = attack.toStdString();
    const bool isLong = attack.size() > 100;
    std::set<std::string_view> done;
    Ledger out;
    for (const Entry& entry : ledger.entries()) {
        if (isLong && !done.insert(kindOf(entry.body).kind).second) {
            out.append(entry.time, entry.person, entry.body);
            continue;
        }
        std::vector<Cell> cells = cellsOf(entry.body);
        const KindInfo& kind = kindOf(entry.body);
        const auto index = *kindIndex(kind.kind);
        Body body = entry.body;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const auto* text = std::get_if<std::string>(&cells[i]);
            if (text == nullptr || !kind.columns[i].words.empty()) {
                continue;
            }
            const std::string before = *text;
            cells[i] = poison + before;
            if (auto other = bodyFrom(index, cells)) {
                body = std::move(*other);
            } else {
                cells[i] = before;
            }
        }
        out.append(entry.time, poison + entry.person, std::move(body));
    }
    return out;
}

/// How many texts of how many kinds hold the attack.
inline std::pair<int, std::size_t> countPoisoned(const Ledger& ledger, const QString& attack) {
    const std::string poison = attack.toStdString();
    int texts = 0;
    std::set<std::string_view> kinds;
    for (const Entry& entry : ledger.entries()) {
        for (const Cell& cell : cellsOf(entry.body)) {
            const auto* text = std::get_if<std::string>(&cell);
            if (text != nullptr && text->starts_with(poison)) {
                ++texts;
                kinds.insert(kindOf(entry.body).kind);
            }
        }
    }
    return {texts, kinds.size()};
}

/// What was walked over, so that a test can tell that it was not nothing.
struct Walked {
    int widgets = 0, labels = 0, actions = 0, cells = 0, tips = 0;
};

inline std::string nameOf(const QObject* object) {
    std::string words;
    for (const QObject* at = object; at != nullptr; at = at->parent()) {
        words += std::string(words.empty() ? "" : " in ") + at->metaObject()->className();
    }
    return words;
}

inline void checkTip(const QString& tip, const QObject* of, Walked& walked) {
    walked.tips += tip.isEmpty() ? 0 : 1;
    EXPECT_TRUE(isPlainTip(tip)) << nameOf(of)
                                 << " has a tip that shows more than words: " << tip.left(200).toStdString();
}

inline void checkModel(const QAbstractItemModel* model, const QObject* of, const QModelIndex& parent, Walked& walked) {
    constexpr int most = 500;
    for (int row = 0; row < std::min(model->rowCount(parent), most); ++row) {
        for (int column = 0; column < model->columnCount(parent); ++column) {
            const QModelIndex index = model->index(row, column, parent);
            ++walked.cells;
            for (const int role : {Qt::ToolTipRole, Qt::StatusTipRole, Qt::WhatsThisRole}) {
                checkTip(index.data(role).toString(), of, walked);
            }
        }
        if (const QModelIndex first = model->index(row, 0, parent); model->hasChildren(first)) {
            checkModel(model, of, first, walked);
        }
    }
    for (const auto way : {Qt::Horizontal, Qt::Vertical}) {
        const int count = way == Qt::Horizontal ? model->columnCount(parent) : model->rowCount(parent);
        for (int section = 0; section < std::min(count, most); ++section) {
            checkTip(model->headerData(section, way, Qt::ToolTipRole).toString(), of, walked);
        }
    }
}

/// Whether an «&» of the attack would be taken for a key.
inline bool takesKey(const QString& text) {
    return QString(text).remove(QStringLiteral("&&")).contains(QStringLiteral("&File")) ||
           QString(text).remove(QStringLiteral("&&")).contains(QStringLiteral("&amp;"));
}

/// Whether a text is the program's own: its menu has an «&File» of its own.
inline bool isOwn(const QString& text) {
    return text == QLatin1String("&File");
}

/// Looks at a window and everything in it: no label guesses, no tip shows more than words, no name has a key.
inline void walk(QWidget* root, Walked& walked) {
    auto widgets = root->findChildren<QWidget*>();
    widgets.prepend(root);
    for (QWidget* widget : widgets) {
        ++walked.widgets;
        for (const QString& tip : {widget->toolTip(), widget->statusTip(), widget->whatsThis()}) {
            checkTip(tip, widget, walked);
        }
        if (const auto* label = qobject_cast<QLabel*>(widget); label != nullptr && !label->inherits("QTipLabel")) {
            ++walked.labels;
            const bool isTable = label->textFormat() == Qt::RichText && dynamic_cast<const Label*>(label) != nullptr;
            EXPECT_TRUE(label->textFormat() == Qt::PlainText || isTable)
                << nameOf(label) << " guesses what “" << label->text().left(60).toStdString() << "” is";
            EXPECT_FALSE(label->buddy() != nullptr && takesKey(label->text()) && !isOwn(label->text()))
                << label->text().left(60).toStdString();
        }
        EXPECT_EQ(qobject_cast<QTextEdit*>(widget), nullptr) << nameOf(widget) << ": only plain text is edited here";
        if (const auto* button = qobject_cast<QAbstractButton*>(widget)) {
            EXPECT_FALSE(takesKey(button->text())) << nameOf(button) << button->text().left(60).toStdString();
        }
        if (const auto* view = qobject_cast<QAbstractItemView*>(widget); view != nullptr && view->model() != nullptr) {
            checkModel(view->model(), view, {}, walked);
        }
        if (const auto* box = qobject_cast<QComboBox*>(widget)) {
            checkModel(box->model(), box, {}, walked);
        }
    }
    for (QAction* action : root->findChildren<QAction*>()) {
        ++walked.actions;
        for (const QString& tip : {action->toolTip(), action->statusTip(), action->whatsThis()}) {
            checkTip(tip, action, walked);
        }
        EXPECT_FALSE(takesKey(action->text()) && !isOwn(action->text())) << action->text().left(60).toStdString();
    }
}

/// Walks over each dialog that comes up while this lives, and closes it.
class DialogWalk {
public:
    explicit DialogWalk(Walked& walked) {
        m_timer.setInterval(10);
        QObject::connect(&m_timer, &QTimer::timeout, [this, &walked] {
            QWidget* const dialog = QApplication::activeModalWidget();
            if (dialog != nullptr && dialog->isVisible()) {
                ++m_seen;
                dialog->grab();
                walk(dialog, walked);
                m_titles << dialog->windowTitle();
                dialog->close();
            }
        });
        m_timer.start();
    }
    [[nodiscard]] int seen() const { return m_seen; }
    [[nodiscard]] QStringList titles() const { return m_titles; }

private:
    QTimer m_timer;
    int m_seen = 0;
    QStringList m_titles;
};

} // namespace caprail::hostile
