// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/entry_form.h>
#include <text/label.h>

namespace caprail {

class PlanView;

/// What the engine is and where its places lie, with the plan drawn live from what is typed.
class EngineLayoutPage : public QWidget {
    Q_OBJECT
public:
    explicit EngineLayoutPage(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] FormFor<EngineDescribed>* engineForm() const { return m_engine; }
    [[nodiscard]] FormFor<LayoutSet>* layoutForm() const { return m_layout; }

private:
    void load();
    void drawTyped();
    RecordSession& m_session;
    FormFor<EngineDescribed>* m_engine;
    FormFor<LayoutSet>* m_layout;
    PlanView* m_plan;
    Label* m_advice;
};

} // namespace caprail
