// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <functional>
#include <text/label.h>
#include <units/parse.h>

class QAction;
class QLineEdit;

namespace caprail {

class InstrumentBox;

/// The field that a value is typed into: large, with its unit in sight, a live echo of what was read, and the sentence
/// that says why a value was not taken. Enter hands the text to `submit`; a gauge that types like a keyboard needs no
/// more. A word that comes twice at once is asked back (session/storing_press.h).
class EntryField : public QWidget {
    Q_OBJECT
public:
    /// Reads the text: the echo to show, or the sentence that refuses it.
    using Reader = std::function<Result<QString>(const QString& text)>;
    /// Takes the text: nothing when it is stored (the field is cleared), or the sentence that refuses it (the text
    /// stays, unless it is kept to be stored later).
    using Submit = std::function<Result<void>(const QString& text)>;

    explicit EntryField(QWidget* parent = nullptr);
    /// The name of what is typed ("Gap at cap 3 right"), the unit beside the field, and what reads and takes it.
    void ask(const QString& title, const QString& unit, Reader reader, Submit submit);
    /// Convenience for a length: echo in both inch and millimetre.
    void askLength(const QString& title, const Units& units, const Expected<Length>& expected,
                   std::function<Result<void>(const Entered<Length>&)> take);
    /// The same with a reader of its own, for a field in which a bare number means something else.
    using LengthReader = std::function<Result<Entered<Length>>(const std::string& text)>;
    void askLength(const QString& title, const Units& units, const LengthReader& read,
                   std::function<Result<void>(const Entered<Length>&)> take);
    void askTorque(const QString& title, const Units& units, const Expected<Torque>& expected,
                   std::function<Result<void>(const Entered<Torque>&)> take);
    void askAngle(const QString& title, const Units& units, const Expected<Angle>& expected,
                  std::function<Result<void>(const Entered<Angle>&)> take);

    /// Where the instrument of a reading is chosen; asked anew for each.
    void readWith(std::function<InstrumentBox*()> chooser) { m_chooser = std::move(chooser); }
    /// A value that a gauge sent, as if it were typed and Enter pressed. `instrument`, the gauge's name in records,
    /// becomes the reading's; empty: the one that is chosen. Refused, with a sentence in the field: an instrument that
    /// this record does not know, and a value over one that was typed and is not stored.
    void takeFromGauge(const QString& text, const QString& instrument);

    void showProblem(const QString& sentence);
    [[nodiscard]] QString text() const;
    [[nodiscard]] QString problem() const;
    /// Begins typing here with this text (typed on the diagram).
    void type(const QString& text);
    void clear();
    /// Figures that are read from farther away: 1 as usual, 4 at arm's length.
    void setScale(qreal scale);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QLineEdit* lineEdit() const { return m_edit; }

public slots:
    /// As if Enter were pressed.
    void submit();

protected:
    void changeEvent(QEvent* event) override;

private:
    void showEcho();
    Label* m_title;
    QString m_titleText;
    QLineEdit* m_edit;
    Label* m_unit;
    Label* m_echo;
    QAction* m_enter; ///< the sign in the field that stands for the Enter key
    Reader m_reader;
    Submit m_submit;
    std::function<InstrumentBox*()> m_chooser;
    bool m_showsProblem = false;
};

} // namespace caprail
