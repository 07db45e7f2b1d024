// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>

namespace caprail {

/// The column beside the diagram for one mode of the girdle station. The station owns which position is selected; a
/// page asks it to select another one.
class GirdlePage : public QWidget {
    Q_OBJECT
public:
    explicit GirdlePage(RecordSession& session, QWidget* parent = nullptr) : QWidget(parent), m_session(session) {}
    /// Shows facts and assessment anew, with this position selected.
    virtual void refresh(Position selected) = 0;
    /// Puts the keyboard where this mode's entries are typed.
    virtual void focusField() = 0;
    /// Takes a key that was typed on the diagram; false when it means nothing here.
    virtual bool type(const QString& text) = 0;

signals:
    void chosen(caprail::Position position);
    /// An arrow key in a field: the place before (−1) or after (+1) in the order of the pass.
    void stepped(int by);

protected:
    [[nodiscard]] RecordSession& session() const { return m_session; }
    [[nodiscard]] const Facts& facts() const { return m_session.facts(); }
    [[nodiscard]] const Assessment& assessment() const { return m_session.assessment(); }
    [[nodiscard]] const Units& units() const { return m_session.units(); }

private:
    RecordSession& m_session;
};

} // namespace caprail
