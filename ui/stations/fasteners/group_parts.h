// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <text/label.h>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace caprail {

/// Splits places off a fastener group and joins them back: while it is on, touching a place on the diagram takes it, its
/// cap, its side or its ring into the new group, or out of it again.
class FastenersGroupParts : public QWidget {
    Q_OBJECT
public:
    explicit FastenersGroupParts(RecordSession& session, QWidget* parent = nullptr);
    /// The group that is shown.
    void setGroup(const GroupKey& key);
    [[nodiscard]] bool isSplitting() const;
    /// Places chosen for the new group.
    [[nodiscard]] const std::vector<FastenerId>& chosen() const { return m_chosen; }
    void touch(const QString& place);

signals:
    void changed();                                ///< what is chosen, or whether anything is
    void stored(const caprail::GroupKey& selected); ///< the group to show now
    void refused(const QString& sentence);

private:
    void begin(bool isOn);
    void store();
    void join();
    void refresh();
    RecordSession& m_session;
    GroupKey m_key;
    std::vector<FastenerId> m_chosen;
    QPushButton* m_split;
    QComboBox* m_by;
    QLineEdit* m_name;
    QPushButton *m_store, *m_join;
};

} // namespace caprail
