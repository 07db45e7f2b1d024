// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/girdle/page.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/block_load.h>

class QComboBox;
class QLineEdit;

namespace caprail {

/// A place in the table of loads.
struct LoadRow {
    PlaceResidual at;
    std::optional<Force> force; ///< none: no load is known
    bool isHeld = true;         ///< by the rail; else neither ± nor share is told
    std::optional<Force> uncertainty;
    std::optional<double> shareOfPreload;
};

/// The load that the girdle puts into the block: force at each position with its ±, the plate's stress, and what a band
/// of the residual is worth in force. Advice with its assumptions beside it: nothing here is stored or judged.
class GirdleLoadPage : public GirdlePage {
    Q_OBJECT
public:
    explicit GirdleLoadPage(RecordSession& session, QWidget* parent = nullptr);
    void refresh(Position selected) override;
    void focusField() override;
    bool type(const QString& text) override;
    /// As last worked out, both or none; null: `problem` says what is missing, or that it is being worked out.
    [[nodiscard]] const GirdleModel* model() const { return m_girdle.get(); }
    [[nodiscard]] const BlockLoad* load() const { return m_load ? &*m_load : nullptr; }
    [[nodiscard]] Rail rail() const;
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    /// The rail is looked at held or free: the diagram and the map follow.
    void railChosen();

private:
    void build();
    void showTable(Position selected);
    [[nodiscard]] std::vector<LoadRow> rows() const;
    void showWorth();
    [[nodiscard]] QString bandFor(const GirdleModel& model) const;
    [[nodiscard]] QString costOf(const GirdleModel& model) const;
    SharedGirdle m_girdle;
    std::optional<BlockLoad> m_load;
    QString m_problem;
    Label* m_summary;
    QComboBox* m_rail;
    Table<LoadRow, Position>* m_table;
    QLineEdit *m_largest, *m_band;
    Label *m_bandFor, *m_costOf;
    Label* m_assumptions;
};

} // namespace caprail
