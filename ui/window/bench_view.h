// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPointer>
#include <QWidget>
#include <text/label.h>

class QBoxLayout;

namespace caprail {

class BenchPad;
class EntryField;
class RecordSession;
class StationPanel;

/// One place at a time, in figures that are read at arm's length, and nothing else: the field of the station that a
/// person works at, taken over for as long as the view lasts, with all that its keys do; above it the place, or the
/// picture that the station has of it; below it what was stored last; beside it keys for a hand in a glove. Escape goes
/// back.
class BenchView : public QWidget {
    Q_OBJECT
public:
    explicit BenchView(RecordSession& session, QWidget* parent = nullptr);
    ~BenchView() override;
    /// Takes the station's field; false when nothing is typed there now.
    bool enter(StationPanel* station);
    /// Gives the field back to its station.
    void leave();
    [[nodiscard]] bool isActive() const { return m_station != nullptr; }
    [[nodiscard]] EntryField* field() const;
    /// Says something that is about no value, where what was stored last stands.
    void tell(const QString& sentence);

signals:
    void left();
    void strikeAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    /// The keyboard stays in the field: what lies under this view is out of reach.
    bool focusNextPrevChild(bool) override { return true; }

private:
    void take(EntryField* entryField);
    void takePicture();
    /// Puts `widget` into `gap`, which stands where the station had it.
    void lend(QWidget* widget, QPointer<QWidget>& gap);
    void putBack(QWidget* widget, QPointer<QWidget>& gap);
    void returnField();
    void follow();
    void scale();
    RecordSession& m_session;
    StationPanel* m_station = nullptr;
    QPointer<EntryField> m_field;
    QPointer<QWidget> m_gap; ///< stands in the station where the field was
    QPointer<QWidget> m_picture, m_pictureGap;
    Label* m_place;
    Label* m_last;
    Label* m_keys;
    QBoxLayout* m_column;
    BenchPad* m_pad;
};

} // namespace caprail
