// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/girdle/page.h>
#include <text/label.h>
#include <work/recheck_guide.h>

class QPushButton;

namespace caprail {

class ChecksView;
class EntriesTable;
class InstrumentBox;
class PlaceHeading;

/// The recheck: the straightedge laid on each built stack. R, D or L says how it feels there. Where arithmetic cannot
/// prove the stack, the page goes on to a bracket: it names the shims to exchange, and the same keys say what the
/// straightedge did then. B brackets a stack that is good without. After the last answer it goes on to the next stack.
class GirdleRecheck : public GirdlePage {
    Q_OBJECT
public:
    explicit GirdleRecheck(RecordSession& session, QWidget* parent = nullptr);
    void refresh(Position selected) override;
    void focusField() override;
    bool type(const QString& text) override;
    /// What is asked for, as it is shown.
    [[nodiscard]] QString task() const { return m_task->text(); }
    /// What carries the verdict, as it is shown.
    [[nodiscard]] QString carried() const { return m_carried->text(); }
    [[nodiscard]] QString feel() const { return m_feel->text(); }

signals:
    /// The person wants their feel with this straightedge tried.
    void feelAsked(const QString& person, const QString& straightedge);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildButtons();
    void store(Feel feel);
    void bracket();
    void showTask();
    void showCarried();
    [[nodiscard]] WhoFeels who() const;
    [[nodiscard]] bool isBuiltOn(Position position) const;
    [[nodiscard]] QString asBuiltTask() const;
    [[nodiscard]] Position next() const;
    Position m_position;
    bool m_isBracketWanted = false;
    RecheckGuide m_guide;
    PlaceHeading* m_heading;
    Label* m_steps;
    Label* m_task;
    Label* m_carried;
    Label* m_feel;
    Label* m_flushness;
    InstrumentBox* m_instrument;
    std::vector<QPushButton*> m_buttons;
    QPushButton* m_bracket;
    QPushButton* m_tryFeel;
    EntriesTable* m_entries;
    ChecksView* m_checks;
};

} // namespace caprail
