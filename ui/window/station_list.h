// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/record_session.h>
#include <tables/table.h>

namespace caprail {

/// The stations in the order of the job, each with a sign for how its checks stand and how many are open.
class StationList : public List<Station, Station> {
    Q_OBJECT
public:
    explicit StationList(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void show(Station station);
    /// Only the signs and how many are open: for a small window. Names are in the tips and for screen readers.
    void setCompact(bool isCompact);
    [[nodiscard]] bool isCompact() const { return m_isCompact; }

signals:
    void stationChosen(caprail::Station station);

private:
    [[nodiscard]] int widthFor(bool isCompact) const;
    bool m_isCompact = false;
};

} // namespace caprail
