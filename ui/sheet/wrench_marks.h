// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <QStringList>
#include <assessment/facts.h>
#include <units/format.h>

namespace caprail::sheet {

/// Marks at torques that were pulled with a wrench outside its range (†) or past its calibration (‡), and the sentences
/// that explain them under the table. ISO 6789: a wrench is used from 20 % of its largest value on unless marked
/// otherwise, and calibrated after a year or 5000 cycles unless the shop says otherwise.
class WrenchMarks {
public:
    WrenchMarks(const Facts& facts, const Units& units) : m_facts(facts), m_units(units) {}

    /// "†", "‡", "†‡" or nothing, for one pull; remembers why.
    QString markFor(const std::string& wrench, std::optional<Torque> torque, UtcTime time);
    /// Why, one sentence a line; empty when nothing was marked.
    [[nodiscard]] QString explanation() const { return m_reasons.join(QLatin1Char('\n')); }

private:
    void remember(const QString& reason);

    const Facts& m_facts;
    const Units& m_units;
    QStringList m_reasons;
};

} // namespace caprail::sheet
