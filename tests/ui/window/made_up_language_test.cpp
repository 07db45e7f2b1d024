// SPDX-License-Identifier: GPL-3.0-or-later
/// A language that nobody speaks: each English text with accents, a third longer, between ⟦ and ⟧. What is cut in it
/// will be cut in a language to come, and what stands outside the brackets was never given to the translators.
#include "../cut_texts.h"
#include "../every_view.h"
#include "../pictures.h"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>
#include <base/say.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace caprail {
namespace {

QString madeUp(const QString& source) {
    static const QString plain = QStringLiteral("aeiouyAEIOUY");
    static const QString accented = QStringLiteral("áéíóúýÁÉÍÓÚÝ");
    QString text;
    int letters = 0;
    for (const QChar c : source) {
        const auto at = plain.indexOf(c);
        text += at < 0 ? c : accented[at];
        letters += c.isLetter() ? 1 : 0;
    }
    // The letter behind an «&» is a key and stays one; of a key that stands alone there is no more to say.
    static const QRegularExpression key(QStringLiteral("^[A-Z]$|^Alt|^Ctrl"));
    const QString longer(key.match(source).hasMatch() ? 0 : letters * 3 / 10, QLatin1Char('~'));
    const qsizetype firstLine = text.indexOf(QLatin1Char('\n'));
    return firstLine < 0 ? QStringLiteral("⟦") + text + longer + QStringLiteral("⟧")
                         : QStringLiteral("⟦") + text + QStringLiteral("⟧");
}

class MadeUp : public QTranslator {
public:
    [[nodiscard]] QString translate(const char* context, const char* source, const char*, int n) const override {
        // Qt's own words (OK, Cancel) have catalogues of their own.
        return QByteArrayView(context).startsWith('Q')
                   ? QString()
                   : madeUp(QString::fromUtf8(source)).replace(QLatin1String("%n"), QString::number(n));
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
};

/// Every word of three letters and more that stands in a record.
std::set<QString> wordsIn(const QString& text) {
    static const QRegularExpression word(QStringLiteral("[A-Za-z]{3,}"));
    std::set<QString> words;
    for (const auto& match : word.globalMatch(text)) {
        words.insert(match.captured());
    }
    return words;
}

/// What stands outside the brackets, however deep they lie in each other.
QString outside(const QString& text) {
    QString left;
    int depth = 0;
    for (const QChar c : text) {
        depth += c == QChar(u'⟦') ? 1 : 0;
        left += depth == 0 ? c : QLatin1Char(' ');
        depth -= c == QChar(u'⟧') ? 1 : 0;
    }
    return left;
}

class MadeUpLanguage : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(m_folder.path());
        QCoreApplication::installTranslator(new MadeUp); // to the end of the process
        Core::speak([](const char* source) { return madeUp(QString::fromUtf8(source)).toStdString(); });
        const QString copy = m_folder.filePath(QStringLiteral("record.caprail"));
        ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/moved-in-verify-round.caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        m_window = std::make_unique<MainWindow>();
        m_window->setAttribute(Qt::WA_DeleteOnClose, false);
        m_window->resize(1280, 800);
        ASSERT_TRUE(m_window->openFile(copy));
        m_window->show();
    }
    QTemporaryDir m_folder;
    std::unique_ptr<MainWindow> m_window;
};

TEST_F(MadeUpLanguage, no_button_tab_or_short_label_is_cut) {
    constexpr std::size_t paragraph = 250; // bytes: how whole paragraphs fit, German tells, which is a language
    m_window->resize(1280, 800);
    inEveryView(*m_window, [&](const std::string& view) {
        picture(*m_window, QStringLiteral("made-up-") + QString::fromStdString(view));
        for (const std::string& cut : cutTexts(*m_window)) {
            EXPECT_GE(cut.size(), paragraph) << view << ": " << cut;
        }
    });
}

TEST_F(MadeUpLanguage, nothing_was_kept_from_the_translators) {
    QFile ledger(QStringLiteral(SAMPLE_BUILDS "/moved-in-verify-round.jsonl"));
    ASSERT_TRUE(ledger.open(QIODevice::ReadOnly));
    std::set<QString> known = wordsIn(QString::fromUtf8(ledger.readAll()));
    for (const char* word : {"lbf", "thou", "Alt", "Ctrl", "Shift", "caprail", "Caprail"}) {
        known.insert(QLatin1String(word));
    }
    std::set<std::string> english;
    inEveryView(*m_window, [&](const std::string& view) {
        const auto look = [&](const QString& text) {
            for (const QString& word : wordsIn(outside(text))) {
                if (!known.contains(word)) {
                    english.insert("“" + word.toStdString() + "” in “" + text.toStdString() + "”, " + view);
                }
            }
        };
        for (const QLabel* label : m_window->findChildren<QLabel*>()) {
            if (label->isVisible() && label->textFormat() != Qt::RichText) {
                look(label->text());
            }
        }
        for (const QAbstractButton* button : m_window->findChildren<QAbstractButton*>()) {
            if (button->isVisible()) {
                look(button->text());
            }
        }
    });
    EXPECT_THAT(english, testing::IsEmpty());
}

} // namespace
} // namespace caprail
