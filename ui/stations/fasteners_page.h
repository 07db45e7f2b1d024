// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>

namespace caprail {

/// The column beside the diagram for one mode of the fasteners station. The station owns which fastener is selected; a
/// page asks it to select another one.
class FastenersPage : public QWidget {
    Q_OBJECT
public:
    explicit FastenersPage(RecordSession& session, QWidget* parent = nullptr) : QWidget(parent), m_session(session) {}
    /// Shows facts and assessment anew, with this fastener selected.
    virtual void refresh(FastenerId selected) = 0;
    virtual void focusField() = 0;
    /// Takes a key that was typed on the diagram.
    virtual void type(const QString& text) = 0;
    /// The fasteners in the order in which this mode goes through them.
    [[nodiscard]] virtual std::vector<FastenerId> order() const = 0;

signals:
    void chosen(caprail::FastenerId fastener);
    /// An arrow key in a field: the fastener before (−1) or after (+1) in the order.
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
