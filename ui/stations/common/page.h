// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>

namespace caprail {

/// The column beside the diagram for one mode of a station. The station owns which place is selected; a page asks it
/// to select another one.
class Page : public QWidget {
    Q_OBJECT
public:
    explicit Page(RecordSession& session, QWidget* parent = nullptr) : QWidget(parent), m_session(session) {}
    /// Puts the keyboard where this mode's entries are typed.
    virtual void focusField() = 0;

signals:
    /// An arrow key in a field: the place before (−1) or after (+1) in this mode's order.
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
