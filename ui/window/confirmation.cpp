// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/confirmation.h>

#include <QApplication>
#include <QTimer>
#include <cstdlib>
#include <session/language.h>
#ifdef CAPRAIL_HAS_SPEECH
#include <libspeechd.h>
#endif

namespace caprail {

namespace {

constexpr int betweenRings = 180; // milliseconds: two bells that are heard as two

} // namespace

#ifdef CAPRAIL_HAS_SPEECH
struct Confirmation::Speech {
    static std::unique_ptr<Speech> open() {
        constexpr int startIt = 1; // when no program has started it yet
        char* error = nullptr;
        SPDConnection* connection = spd_open2("caprail", "entries", nullptr, SPD_MODE_SINGLE, nullptr, startIt, &error);
        std::free(error);
        if (connection == nullptr) {
            return nullptr;
        }
        // The voice of the language that the words are in; a refusal leaves the one that the desktop chose.
        spd_set_language(connection, spokenLanguage().toUtf8().constData());
        return std::make_unique<Speech>(connection);
    }
    /// The newest entry is what counts: what is being said ends. False: the service went away.
    [[nodiscard]] bool say(const QString& words) const {
        spd_cancel(connection);
        return spd_say(connection, SPD_MESSAGE, words.toUtf8().constData()) >= 0;
    }
    explicit Speech(SPDConnection* given) : connection(given) {}
    ~Speech() { spd_close(connection); }
    Speech(const Speech&) = delete;
    Speech& operator=(const Speech&) = delete;
    SPDConnection* connection;
};
#else
struct Confirmation::Speech { ///< built without it: the bell rings instead
    static std::unique_ptr<Speech> open() { return nullptr; }
    [[nodiscard]] static bool say(const QString&) { return false; }
};
#endif

Confirmation::Confirmation(QObject* parent) : QObject(parent) {}

Confirmation::~Confirmation() = default;

void Confirmation::setChoice(ConfirmationChoice choice) {
    m_choice = choice;
}

bool Confirmation::canSpeak() {
    if (!m_hasAsked) {
        m_hasAsked = true;
        m_speech = Speech::open();
    }
    return m_speech != nullptr;
}

void Confirmation::ring(int times) {
    emit rang(times);
    for (int i = 0; i < times; ++i) {
        QTimer::singleShot(i * betweenRings, this, [] { QApplication::beep(); });
    }
}

void Confirmation::say(const QString& words, int rings) {
    if (m_choice == ConfirmationChoice::silent) {
        return;
    }
    if (m_choice == ConfirmationChoice::spoken && canSpeak()) {
        emit spoke(words);
        if (!m_speech->say(words)) {
            // Asked for again with the next entry.
            m_speech.reset();
            m_hasAsked = false;
            ring(rings);
        }
    } else {
        ring(rings);
    }
}

void Confirmation::stored(const QString& words) {
    say(words, 1);
}

void Confirmation::refused(const QString& sentence) {
    say(tr("Not entered. %1").arg(sentence), 2);
}

} // namespace caprail
