// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/entry_form.h>
#include <tables/table.h>

namespace caprail {

struct BandRow;

/// What the record judges by: the bands, each with who says so, any fit of the shop's own, and the rules.
class EngineBands : public QWidget {
    Q_OBJECT
public:
    explicit EngineBands(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void selectBand(const QString& name);
    [[nodiscard]] FormFor<RulesSet>* rulesForm() const { return m_rules; }

private:
    void showBand(const std::string& name);
    void remarkOn(const std::string& name);
    RecordSession& m_session;
    Table<BandRow, std::string>* m_table;
    FormFor<BandSet>* m_band;
    FormFor<RulesSet>* m_rules;
};

/// The latest entry that set a band; nothing when none did.
std::optional<BandSet> bandEntry(const RecordSession& session, const std::string& name);

} // namespace caprail
