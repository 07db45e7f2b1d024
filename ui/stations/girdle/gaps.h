// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/girdle/page.h>
#include <text/label.h>

class QPushButton;
class QSpinBox;

namespace caprail {

class ChecksView;
class EntriesTable;
class EntryField;
class InstrumentBox;
class OptionalField;
class PlaceHeading;

/// The gap survey: the place large, its last value larger, the field, and under it the readings of the place and what
/// they add up to. Enter stores and goes to the next place that the pass needs.
class GirdleGaps : public GirdlePage {
    Q_OBJECT
public:
    explicit GirdleGaps(RecordSession& session, QWidget* parent = nullptr);
    void refresh(Position selected) override;
    void focusField() override;
    bool type(const QString& text) override;
    [[nodiscard]] const std::vector<Position>& order() const { return m_order; }
    [[nodiscard]] EntryField* field() const { return m_field; }
    [[nodiscard]] OptionalField* doesNotGo() const { return m_doesNotGo; }
    [[nodiscard]] InstrumentBox* straightedge() const { return m_straightedge; }
    [[nodiscard]] std::int64_t pass() const;
    [[nodiscard]] Position position() const { return m_position; }

private:
    void build();
    void followLayout();
    void askForGap();
    /// Where the pass goes once this place is read.
    [[nodiscard]] QString whatFollows() const;
    void editOrder();
    Result<void> store(const Entered<Length>& gap);
    Position m_position;
    std::vector<Position> m_order;
    PlaceHeading* m_heading;
    EntryField* m_field;
    QSpinBox* m_pass;
    InstrumentBox* m_instrument;
    InstrumentBox* m_straightedge;
    OptionalField* m_doesNotGo;
    Label* m_orderText;
    Label* m_next;
    EntriesTable* m_entries;
    ChecksView* m_checks;
};

} // namespace caprail
