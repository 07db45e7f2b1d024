// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QString>
#include <memory>

namespace caprail {

/// How a person who does not look at the screen learns that an entry is on disk, or was not taken.
enum class ConfirmationChoice { silent, sound, spoken };

/// Says it: nothing, the desktop's bell (twice for a refusal), or the words themselves through the desktop's speech
/// service. Where there is no such service, the bell.
class Confirmation : public QObject {
    Q_OBJECT
public:
    explicit Confirmation(QObject* parent = nullptr);
    ~Confirmation() override;
    void setChoice(ConfirmationChoice choice);
    [[nodiscard]] ConfirmationChoice choice() const { return m_choice; }
    /// Whether a speech service answers on this computer. Starts it when it was not asked for before.
    [[nodiscard]] bool canSpeak();
    void stored(const QString& words);
    void refused(const QString& sentence);

signals:
    void rang(int times); ///< the bell
    void spoke(const QString& words);

private:
    void ring(int times);
    void say(const QString& words, int rings);
    ConfirmationChoice m_choice = ConfirmationChoice::silent;
    struct Speech; ///< a connection to the speech service
    std::unique_ptr<Speech> m_speech;
    bool m_hasAsked = false; ///< for the speech service: once is enough
};

} // namespace caprail
