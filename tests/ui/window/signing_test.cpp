// SPDX-License-Identifier: GPL-3.0-or-later
/// Signing in the window: offered after the sign-off, by the menu, with a key that exists or is made.
#include "../find.h"
#include "../pictures.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QInputDialog>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <assessment/signatures.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <session/signing.h>
#include <shop/key_folder.h>
#include <window/main_window.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

/// Answers each dialog that opens with the next text: "yes" and "no" press a button, anything else is typed and taken.
class Answers {
public:
    explicit Answers(QStringList texts) : m_left(std::move(texts)) {
        m_timer.setInterval(5);
        QObject::connect(&m_timer, &QTimer::timeout, [this] {
            QWidget* dialog = QApplication::activeModalWidget();
            if (dialog == nullptr) {
                return;
            }
            const QString next = m_left.isEmpty() ? QString() : m_left.takeFirst();
            if (auto* box = qobject_cast<QMessageBox*>(dialog)) {
                asked << box->text();
                picture(*box, QStringLiteral("signing-%1").arg(asked.size()));
                QAbstractButton* button = box->button(next == QLatin1String("no") ? QMessageBox::No : QMessageBox::Yes);
                (button == nullptr ? box->buttons().front() : button)->click();
            } else if (auto* input = qobject_cast<QInputDialog*>(dialog)) {
                asked << input->labelText();
                isHidden << (input->textEchoMode() == QLineEdit::Password);
                picture(*input, QStringLiteral("signing-%1").arg(asked.size()));
                input->setTextValue(next);
                input->accept();
            } else {
                dialog->close();
            }
        });
        m_timer.start();
    }
    QStringList asked;
    QList<bool> isHidden;

private:
    QStringList m_left;
    QTimer m_timer;
};

class SigningWindow : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(m_folder.path());
        const QString copy = m_folder.filePath(QStringLiteral("closed.caprail"));
        ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/closed.caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        m_window.setAttribute(Qt::WA_DeleteOnClose, false);
        m_window.show();
        ASSERT_TRUE(m_window.openFile(copy));
        QApplication::processEvents();
    }
    /// A key of the user's own.
    static KeyNote keep(const std::string& name, std::string_view passphrase = {}) {
        const auto key = makeRandomKey(name, {}, {}, passphrase);
        EXPECT_TRUE(key && KeyFolder(keyFolderPath()).keep(*key));
        return key->note;
    }
    [[nodiscard]] RecordSession& session() const { return *m_window.session(); }
    /// Takes the sample's sign-off back and signs off again.
    void signOff() const {
        const auto entry = session().facts().signedOff->entry;
        ASSERT_TRUE(session().append(Struck{entry, "to be done once more"}));
        ASSERT_TRUE(session().append(SignedOff{"Every check good."}));
        QTest::qWait(50);
    }
    void signByMenu() const {
        child<QAction>(m_window, "signRecord")->trigger();
        QTest::qWait(20);
    }
    QTemporaryDir m_folder;
    MainWindow m_window;
};

} // namespace

TEST_F(SigningWindow, a_sign_off_offers_to_sign_where_there_is_a_key) {
    const KeyNote key = keep("Kestrel Lane");
    const Answers answers({"yes"});
    signOff();
    ASSERT_EQ(answers.asked.size(), 1);
    EXPECT_THAT(answers.asked[0].toStdString(), HasSubstr(fingerprint(key.publicKey)));
    const auto signatures = signaturesOf(session().ledger());
    ASSERT_EQ(signatures.size(), 1U);
    EXPECT_TRUE(signatures[0].coversAll);
    EXPECT_EQ(signatures[0].key, key);
}

TEST_F(SigningWindow, a_sign_off_without_a_key_or_with_no_for_an_answer_signs_nothing) {
    {
        const Answers answers({});
        signOff();
        EXPECT_TRUE(answers.asked.isEmpty()) << answers.asked.join("; ").toStdString();
    }
    keep("Kestrel Lane");
    const Answers answers({"no"});
    signOff();
    EXPECT_EQ(answers.asked.size(), 1);
    EXPECT_TRUE(signaturesOf(session().ledger()).empty());
}

TEST_F(SigningWindow, by_the_menu_a_first_key_is_made_and_signs) {
    const Answers answers({"yes", "Kestrel Lane", "three blue pistons", "three blue pistons", ""});
    signByMenu();
    ASSERT_EQ(answers.asked.size(), 5) << "a passphrase given twice is not asked again: "
                                       << answers.asked.join("; ").toStdString();
    EXPECT_EQ(answers.isHidden, (QList<bool>{false, true, true})) << "a passphrase is not shown";
    const auto keys = KeyFolder(keyFolderPath()).list().keys;
    ASSERT_EQ(keys.size(), 1U);
    EXPECT_TRUE(keys[0].isProtected());
    EXPECT_THAT(answers.asked[4].toStdString(), HasSubstr(fingerprint(keys[0].note.publicKey)));
    ASSERT_EQ(signaturesOf(session().ledger()).size(), 1U);
    EXPECT_TRUE(signaturesOf(session().ledger())[0].coversAll);
}

TEST_F(SigningWindow, two_passphrases_that_differ_make_no_key) {
    const Answers answers({"yes", "Kestrel Lane", "three blue pistons", "three red pistons", ""});
    signByMenu();
    EXPECT_THAT(answers.asked.last().toStdString(), HasSubstr("differ"));
    EXPECT_TRUE(KeyFolder(keyFolderPath()).list().keys.empty());
}

TEST_F(SigningWindow, a_wrong_passphrase_is_said_and_asked_again) {
    keep("Kestrel Lane", "three blue pistons");
    const Answers answers({"yes", "three red pistons", "", "three blue pistons"});
    signByMenu();
    ASSERT_EQ(answers.asked.size(), 4);
    EXPECT_THAT(answers.asked[2].toStdString(), HasSubstr("does not open the key"));
    EXPECT_EQ(signaturesOf(session().ledger()).size(), 1U);
}

TEST_F(SigningWindow, of_two_keys_one_is_chosen) {
    keep("Kestrel Lane");
    const KeyNote mira = keep("Mira at home");
    const Answers answers({"Mira at home"});
    signByMenu();
    ASSERT_EQ(signaturesOf(session().ledger()).size(), 1U);
    EXPECT_EQ(signaturesOf(session().ledger())[0].key, mira);
}

TEST_F(SigningWindow, tells_the_kinds_of_entries_that_scripts_write) {
    QString text;
    QTimer::singleShot(20, [&] {
        QWidget* dialog = QApplication::activeModalWidget();
        text = child<QPlainTextEdit>(dialog, "entryKinds")->toPlainText();
        picture(*dialog, QStringLiteral("entry-kinds"));
        dialog->close();
    });
    m_window.showEntryKinds();
    EXPECT_THAT(text.toStdString(), testing::AllOf(HasSubstr("gap_reading"), HasSubstr("signature"), HasSubstr("band_set")));
}
