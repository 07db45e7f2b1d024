// SPDX-License-Identifier: GPL-3.0-or-later
/// The helper by which text comes onto the screen as plain text, and that nothing goes round it.
#include "hostile_text.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFormLayout>
#include <QInputDialog>
#include <QMessageBox>
#include <QRegularExpression>
#include <QTest>
#include <QToolTip>
#include <gmock/gmock.h>
#include <session/filled.h>
#include <text/ask.h>
#include <window/house_style.h>

using namespace caprail;

TEST(PlainText, a_bare_label_takes_the_bait_and_ours_does_not) {
    const hostile::Bait bait;
    const QString text = hostile::attacks(bait.path()).front().text;
    QLabel bare(text);
    bare.grab();
    ASSERT_GT(bait.taken(), 0) << "the trap is set";
    const int before = bait.taken();
    Label ours(text);
    ours.grab();
    setTip(&ours, text);
    showTip({0, 0}, text, &ours);
    PlainBox(QMessageBox::Warning, text, text, QMessageBox::Ok, nullptr).grab();
    Label table;
    table.setTable({{{text, true, true}}}, 1);
    table.grab();
    QTest::qWait(50);
    EXPECT_EQ(bait.taken(), before);
}

TEST(PlainText, a_label_paints_the_letters_that_it_is_given) {
    for (const char* text : {"<b>GOOD</b>", "<html>", "&amp;", "&File", "a\nb"}) {
        QLabel letters;
        letters.setTextFormat(Qt::PlainText);
        letters.setText(QString::fromUtf8(text));
        Label label(QString::fromUtf8(text));
        label.resize(letters.sizeHint());
        letters.resize(letters.sizeHint());
        EXPECT_EQ(label.grab().toImage(), letters.grab().toImage()) << text;
    }
    Label label;
    label.setTable({{{QStringLiteral("<b>GOOD</b>")}}}, 1);
    EXPECT_THAT(label.text().toStdString(), testing::HasSubstr("&lt;b&gt;GOOD&lt;/b&gt;"));
    label.setText(QStringLiteral("<b>GOOD</b>"));
    EXPECT_EQ(label.textFormat(), Qt::PlainText) << "after a table too";
}

TEST(PlainText, marks_that_turn_the_letters_after_them_around_are_shown_as_what_they_are) {
    EXPECT_EQ(visible(QStringLiteral("a\u202Eb")), QStringLiteral("a⟨U+202E⟩b"));
    EXPECT_EQ(Label(QStringLiteral("\u2066x")).text(), QStringLiteral("⟨U+2066⟩x"));
    EXPECT_EQ(visible(QStringLiteral("two\nlines, \"Ærø\" 60 µm")), QStringLiteral("two\nlines, \"Ærø\" 60 µm"));
}

TEST(PlainText, a_stack_of_three_thousand_marks_is_painted_like_any_text) {
    const QString text = QStringLiteral("e") + QString(3'000, QChar(0x0301));
    Label label(text);
    EXPECT_FALSE(label.grab().isNull());
    EXPECT_EQ(label.text(), text);
    EXPECT_FALSE(PlainBox(QMessageBox::Warning, text, text, QMessageBox::Ok, nullptr).grab().isNull());
    EXPECT_TRUE(isPlainTip(plainTip(text)));
}

TEST(PlainText, a_tip_is_shown_letter_for_letter) {
    for (const QString& text : {QStringLiteral("<b>GOOD</b>"), QStringLiteral("a < b & c"), QStringLiteral("plain")}) {
        EXPECT_TRUE(isPlainTip(plainTip(text)));
        EXPECT_TRUE(isPlainTip(wrappedTip(text)));
    }
    EXPECT_EQ(plainTip(QStringLiteral("a < b & c")), QStringLiteral("a < b & c")) << "Qt does not take it for markup";
    EXPECT_EQ(plainTip(QStringLiteral("<b>x</b>\ny")), QStringLiteral("<p>&lt;b&gt;x&lt;/b&gt;<br>y</p>"));
    EXPECT_FALSE(isPlainTip(QStringLiteral("<b>GOOD</b>")));
    EXPECT_FALSE(isPlainTip(QStringLiteral("<p><img src=x></p>")));
}

TEST(PlainText, an_ampersand_in_a_name_is_no_key_and_a_star_in_a_title_no_mark) {
    EXPECT_EQ(literal(QStringLiteral("Bolt & Nut\tx")), QStringLiteral("Bolt && Nut x"));
    QWidget window;
    window.setWindowTitle(literalTitle(QStringLiteral("V8 [*]")));
    EXPECT_EQ(window.windowTitle(), QStringLiteral("V8 [*][*]")) << "as Qt wants it, to show it once";
    QWidget field;
    QFormLayout form;
    addRow(&form, QStringLiteral("&Engine"), &field);
    auto* label = qobject_cast<QLabel*>(form.itemAt(0, QFormLayout::LabelRole)->widget());
    EXPECT_EQ(label->buddy(), &field);
    EXPECT_EQ(label->textFormat(), Qt::PlainText);
    delete label;
}

TEST(PlainText, a_filled_in_text_is_not_searched_for_places_again) {
    EXPECT_EQ(filled(QStringLiteral("%1 of %2 by %3"), QStringLiteral("50 %2"), 3, QStringLiteral("%1")),
              QStringLiteral("50 %2 of 3 by %1"));
    EXPECT_EQ(filled(QStringLiteral("100 % and %9, %1%"), 7), QStringLiteral("100 % and %9, 7%"));
}

TEST(PlainText, questions_show_names_letter_for_letter) {
    hostile::Walked walked;
    const hostile::DialogWalk dialogs(walked);
    const QString name = QStringLiteral("<b>GOOD</b> &File");
    EXPECT_FALSE(askText(nullptr, name, QStringLiteral("Why is %1 set aside?").arg(name)));
    EXPECT_FALSE(askChoice(nullptr, name, name, {name, name}, 0, true));
    EXPECT_EQ(ask(nullptr, name, name, QMessageBox::Yes | QMessageBox::No, QMessageBox::No), QMessageBox::No);
    inform(nullptr, name, name);
    warn(nullptr, name, name);
    EXPECT_EQ(dialogs.seen(), 5);
    EXPECT_GE(walked.labels, 5);
}

TEST(PlainText, what_qt_itself_says_in_a_box_is_plain_too) {
    HouseStyle style;
    QMessageBox box(QMessageBox::Question, QStringLiteral("Save"), QStringLiteral("<b>a</b> already exists."));
    box.setStyle(&style);
    for (QLabel* label : box.findChildren<QLabel*>()) {
        label->setStyle(&style);
        label->ensurePolished();
        EXPECT_EQ(label->textFormat(), Qt::PlainText);
    }
}

// What goes round the helper would be found by the walk through all windows only when a test happens to pass there.
TEST(PlainText, nothing_in_the_sources_goes_round_the_helper) {
    struct Rule {
        QRegularExpression pattern;
        const char* instead;
    };
    const Rule rules[] = {
        {QRegularExpression(R"(\bQLabel\b)"), "Label (text/label.h)"},
        {QRegularExpression(R"((->|\.)setToolTip\((?!wrappedTip\())"), "setTip (text/plain_text.h)"},
        {QRegularExpression(R"(setWhatsThis|setStatusTip|WhatsThisRole|StatusTipRole)"), "no such tips"},
        {QRegularExpression(R"(QToolTip::showText)"), "showTip (text/plain_text.h)"},
        {QRegularExpression(R"(QMessageBox::(warning|information|question|critical|about)\b|\bQMessageBox \w+[({])"),
         "warn, inform, ask, PlainBox (text/ask.h)"},
        {QRegularExpression(R"(QInputDialog|QErrorMessage|QProgressDialog)"), "askText, askChoice (text/ask.h)"},
        {QRegularExpression(
             R"(QTextDocument|QTextEdit|QTextBrowser|QStaticText|setHtml|toHtml\b|RichText|MarkdownText)"),
         "Label::setTable, or plain text"},
        {QRegularExpression(R"(addRow\(tr\()"), "addRow(form, …) (text/plain_text.h)"},
        {QRegularExpression(R"(\bQ(Table|Tree|List)Widget|QStandardItem)"), "Table or List (tables/table.h)"},
    };
    int files = 0;
    for (const char* folder : {"/ui", "/app"}) {
        QDirIterator sources(QStringLiteral(SOURCES) + QLatin1String(folder), {"*.cpp", "*.h"}, QDir::Files,
                             QDirIterator::Subdirectories);
        while (sources.hasNext()) {
            const QString path = sources.next();
            if (path.contains(QStringLiteral("/ui/text/"))) {
                continue;
            }
            QFile file(path);
            ASSERT_TRUE(file.open(QFile::ReadOnly));
            ++files;
            int number = 0;
            while (!file.atEnd()) {
                ++number;
                const QString line = QString::fromUtf8(file.readLine());
                const QString code = line.section(QStringLiteral("//"), 0, 0);
                for (const Rule& rule : rules) {
                    const bool isHook = path.endsWith(QStringLiteral("house_style.cpp")); // where Qt's own are tamed
                    EXPECT_TRUE(isHook || !rule.pattern.match(code).hasMatch())
                        << path.toStdString() << ":" << number << ": " << line.trimmed().toStdString()
                        << "\n  instead: " << rule.instead;
                }
                const bool isTip = code.contains(QStringLiteral("Qt::ToolTipRole")) && code.contains("setData");
                EXPECT_TRUE(!isTip || code.contains(QStringLiteral("plainTip(")))
                    << path.toStdString() << ":" << number << ": a tip without plainTip";
            }
        }
    }
    EXPECT_GT(files, 200);
}
