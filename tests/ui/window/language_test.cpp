// SPDX-License-Identifier: GPL-3.0-or-later
/// The catalogue of every language is whole, and the window speaks it: no text is left in English by chance.
#include "../cut_texts.h"
#include "../every_view.h"
#include "../mnemonics.h"
#include "../pictures.h"

#include <QAbstractButton>
#include <QApplication>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <algorithm>
#include <base/say.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <ledger/column_labels.h>
#include <ledger/kinds.h>
#include <ledger/qt_text.h>
#include <map>
#include <session/language.h>
#include <set>
#include <stations/common/station.h>
#include <stations/girdle/recheck.h>
#include <store/text/text_form.h>
#include <window/main_window.h>

namespace caprail {
namespace {

struct Message {
    QString context, source, comment;
    QStringList forms;
    bool isFinished = true;
};

std::vector<Message> catalogueOf(const QString& code) {
    QFile file(QStringLiteral(CATALOGUES "/caprail_%1.ts").arg(code));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << qPrintable(file.fileName());
    std::vector<Message> list;
    QXmlStreamReader xml(&file);
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        const auto name = xml.name();
        if (name == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (name == QLatin1String("message")) {
            list.push_back({context, {}, {}, {}, true});
        } else if (name == QLatin1String("source")) {
            list.back().source = xml.readElementText();
        } else if (name == QLatin1String("comment")) {
            list.back().comment = xml.readElementText();
        } else if (name == QLatin1String("translation")) {
            list.back().isFinished = xml.attributes().value(QLatin1String("type")).isEmpty();
            const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements);
            list.back().forms << text;
        }
    }
    EXPECT_FALSE(xml.hasError()) << qPrintable(xml.errorString());
    return list;
}

std::set<QString> placeholdersIn(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%[1-9Ln]"));
    std::set<QString> places;
    for (const auto& match : place.globalMatch(text)) {
        places.insert(match.captured());
    }
    return places;
}

TEST(Catalogue, translates_every_text_and_keeps_its_places) {
    for (const QString& code : languages().mid(1)) {
        const auto messages = catalogueOf(code);
        ASSERT_GT(messages.size(), 2000U);
        for (const Message& m : messages) {
            EXPECT_TRUE(m.isFinished && !m.forms.join(QString()).isEmpty())
                << qPrintable(code + QStringLiteral(", ") + m.context + QStringLiteral(": ") + m.source)
                << " is not translated";
            for (const QString& form : m.forms) {
                EXPECT_EQ(placeholdersIn(m.source), placeholdersIn(form)) << qPrintable(m.source);
            }
        }
    }
}

TEST(Catalogue, of_french_parts_its_signs_from_words_by_a_space_that_does_not_break) {
    static const QRegularExpression breaks(QStringLiteral("« | [:;?!»]|[\\w)][;?!»]|[“”]"),
                                           QRegularExpression::UseUnicodePropertiesOption);
    for (const Message& m : catalogueOf(QStringLiteral("fr"))) {
        for (QString form : m.forms) {
            form.remove(QStringLiteral(";;")); // parts a file dialog's filters
            EXPECT_FALSE(breaks.match(form).hasMatch()) << qPrintable(form);
        }
    }
}

TEST(Catalogue, of_english_counts_one_and_several) {
    const auto messages = catalogueOf(QStringLiteral("en"));
    ASSERT_GT(messages.size(), 10U);
    for (const Message& m : messages) {
        EXPECT_TRUE(m.isFinished) << qPrintable(m.source);
        EXPECT_TRUE(m.source.contains(QLatin1String("%n"))) << qPrintable(m.source);
    }
    EXPECT_EQ(MainWindow::tr("%n entries were kept.", "", 1), "1 entry was kept.");
    EXPECT_EQ(MainWindow::tr("%n entries were kept.", "", 2), "2 entries were kept.");
}

TEST(Catalogue, has_what_the_core_marks) {
    for (const QString& code : languages().mid(1)) {
        std::set<std::string> sources;
        for (const Message& m : catalogueOf(code)) {
            if (m.context.endsWith(QLatin1String("Core"))) {
                EXPECT_TRUE(m.comment.isEmpty()) << qPrintable(m.source) << ": a literal stands behind the sentence";
                sources.insert(m.source.toStdString());
            }
        }
        for (const auto label : columnLabels()) {
            EXPECT_TRUE(sources.contains(std::string(label))) << qPrintable(code) << ": " << label;
        }
        for (const KindInfo& kind : allKinds()) {
            EXPECT_TRUE(sources.contains(std::string(kind.title))) << qPrintable(code) << ": " << kind.title;
        }
    }
}

TEST(Language, is_that_of_the_desktop_unless_another_was_chosen) {
    const QLocale austrian(QLocale::German, QLocale::Austria);
    EXPECT_EQ(languageFor({}, austrian), QLatin1String("de"));
    EXPECT_EQ(languageFor(QStringLiteral("en"), austrian), QLatin1String("en"));
    EXPECT_EQ(languageFor({}, QLocale(QLocale::French, QLocale::Canada)), QLatin1String("fr"));
    EXPECT_EQ(languageFor({}, QLocale::c()), QLatin1String("en"));
    EXPECT_EQ(languageFor({}, QLocale(QLocale::Finnish)), QLatin1String("en"));
    EXPECT_EQ(languageFor(QStringLiteral("xx"), QLocale(QLocale::Finnish)), QLatin1String("en"));
}

/// Says the language with this code to the end of the process: ctest runs each test in one of its own.
class Spoken : public testing::TestWithParam<const char*> {
protected:
    void SetUp() override {
        useSettingsIn(m_folder.path());
        speak(QString::fromLatin1(GetParam()));
    }
    QTemporaryDir m_folder;
};

INSTANTIATE_TEST_SUITE_P(Languages, Spoken, testing::Values("de", "fr"),
                         [](const auto& language) { return std::string(language.param); });

TEST_P(Spoken, sentences_are_put_together_in_the_order_of_the_language) {
    const bool isFrench = spokenLanguage() == QLatin1String("fr");
    const std::string place = isFrench ? "chapeau 3 droite" : "Deckel 3 rechts";
    EXPECT_EQ(Core::say("cap %1 %2", 3, Core::say("right")), place);
    EXPECT_NE(Core::say("There is no stack at %1: build it first.", place),
              "There is no stack at " + place + ": build it first.");
    EXPECT_EQ(MainWindow::tr("%n entries were kept.", "", 1),
              isFrench ? "1 inscription a été gardée." : "1 Eintrag wurde behalten.");
}

TEST_P(Spoken, the_key_of_a_recheck_is_the_letter_on_its_button) {
    const QString copy = m_folder.filePath(QStringLiteral("record.caprail"));
    ASSERT_TRUE(importLedger(SAMPLE_BUILDS "/mid-survey.jsonl", copy.toStdString()));
    const auto session = std::move(*RecordSession::open(copy));
    session->setPerson(QStringLiteral("Mira Solheim"));
    GirdleRecheck page(*session);
    page.refresh({1, Side::left});
    for (const auto& feel : allWords<Feel>()) {
        const auto buttons = page.findChildren<QPushButton*>();
        const auto button = std::ranges::find(buttons, qtShown(feel.value), &QPushButton::accessibleName);
        ASSERT_NE(button, buttons.end());
        EXPECT_THAT(page.accessibleName().toStdString(), testing::HasSubstr((*button)->text().left(1).toStdString() +
                                                                            " " + qtShown(feel.value).toStdString()));
        EXPECT_TRUE(page.type((*button)->text().left(1).toLower())) << feel.word;
    }
    EXPECT_FALSE(page.type(QStringLiteral("x")));
}

TEST_P(Spoken, no_station_shows_an_english_text) {
    std::map<QString, QString> translated;
    for (const Message& m : catalogueOf(spokenLanguage())) {
        translated.emplace(m.source, m.forms.join(QString()));
    }
    const QString copy = m_folder.filePath(QStringLiteral("record.caprail"));
    ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/moved-in-verify-round.caprail"), copy));
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    window.resize(1280, 800);
    ASSERT_TRUE(window.openFile(copy));
    window.show();
    std::set<QString> english;
    int seen = 0;
    const auto look = [&](const QString& text, const QObject* where) {
        ++seen;
        auto at = translated.find(text);
        at = at == translated.end() ? translated.find(text.left(1).toLower() + text.mid(1)) : at; // "Dipstick clear"
        if (text != QLatin1String("in") && at != translated.end() &&
            at->second.compare(text, Qt::CaseInsensitive) != 0) { // "in" is the inch beside a field
            english.insert(
                text + QStringLiteral(" in ") + QLatin1String(where->metaObject()->className()) +
                QStringLiteral(" of ") +
                (where->parent() ? QLatin1String(where->parent()->metaObject()->className()) : QLatin1String()));
        }
    };
    for (const auto& station : allWords<Station>()) {
        window.showDestination({station.value, {}});
        QApplication::processEvents();
        for (const QLabel* label : window.findChildren<QLabel*>()) {
            look(label->text(), label);
        }
        for (const QAbstractButton* button : window.findChildren<QAbstractButton*>()) {
            look(button->text(), button);
        }
        for (const QTabWidget* tabs : window.findChildren<QTabWidget*>()) {
            for (int i = 0; i < tabs->count(); ++i) {
                look(tabs->tabText(i), tabs);
            }
        }
        for (const QAction* action : window.findChildren<QAction*>()) {
            look(action->text(), action);
        }
        picture(window, QStringLiteral("%1-%2").arg(spokenLanguage()).arg(static_cast<int>(station.value)));
    }
    EXPECT_GT(seen, 500);
    EXPECT_TRUE(english.empty()) << [&] {
        std::string list;
        for (const QString& text : english) {
            list += text.toStdString() + "\n";
        }
        return list;
    }();
}

TEST_P(Spoken, each_letter_of_a_menu_belongs_to_one_entry) {
    const MainWindow window;
    EXPECT_EQ(sharedLetters(*window.menuBar()), "");
}

TEST_P(Spoken, no_button_label_or_tab_of_any_view_is_cut) {
    for (const char* sample : {"mid-survey", "moved-in-verify-round", "closed"}) {
        const QString copy = m_folder.filePath(QString::fromUtf8(sample) + QStringLiteral(".caprail"));
        ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/") + QFileInfo(copy).fileName(), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        MainWindow window;
        window.setAttribute(Qt::WA_DeleteOnClose, false);
        ASSERT_TRUE(window.openFile(copy));
        window.show();
        window.resize(1280, 800);
        int views = 0;
        inEveryView(window, [&](const std::string& view) {
            picture(window, spokenLanguage() + QStringLiteral("-%1, ").arg(QString::fromUtf8(sample)) +
                                QString::fromStdString(view));
            ++views;
            EXPECT_THAT(cutTexts(window), testing::IsEmpty()) << sample << ", " << view;
        });
        EXPECT_GT(views, 20);
    }
}

} // namespace
} // namespace caprail
