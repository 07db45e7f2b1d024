// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <stations/closing/task_words.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/closing_work.h>

class QPushButton;

namespace caprail {

class EntryField;
class InstrumentBox;
class OpenTime;
class PlanView;

/// What the next thing is about, large: its name, the sealant's clock, the drawing with the place that comes next, and
/// the list of all that the step goes through. The bench view shows it too.
class ClosingPicture : public QWidget {
    Q_OBJECT
public:
    explicit ClosingPicture(QWidget* parent = nullptr);
    void show(const RecordSession& session, const ClosingTask& task);
    [[nodiscard]] OpenTime* clock() const { return m_clock; }
    [[nodiscard]] QListView* list() const { return m_list; }
    [[nodiscard]] PlanView* plan() const { return m_plan; }
    [[nodiscard]] QString title() const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void showLines(const RecordSession& session, const ClosingTask& task);
    void scale();
    Label* m_title;
    Label* m_how;
    OpenTime* m_clock;
    PlanView* m_plan;
    List<TaskLine, int>* m_list;
};

/// The one thing that closing asks for, and the field that takes it: one entry, one Enter.
class ClosingTaskPage : public QWidget {
    Q_OBJECT
public:
    explicit ClosingTaskPage(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    /// Asks one of the shop's own checks, whatever comes next by itself, until it is good.
    void askOwnCheck(const OwnPlace& place);
    [[nodiscard]] EntryField* field() const { return m_field; }
    [[nodiscard]] ClosingPicture* picture() const { return m_picture; }
    [[nodiscard]] const ClosingTask& task() const { return m_task; }

private:
    void ask();
    void takePhoto();
    RecordSession& m_session;
    ClosingTask m_task;
    std::optional<OwnPlace> m_chosen;
    ClosingPicture* m_picture;
    EntryField* m_field;
    InstrumentBox* m_instrument;
    QPushButton* m_photo;
};

} // namespace caprail
