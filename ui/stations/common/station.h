// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/cautions.h>
#include <session/record_session.h>
#include <stations/common/caution_label.h>
#include <stations/common/diagram_tools.h>
#include <vector>

namespace caprail {

class EntryField;

/// A word that a field takes for a whole answer, as a button of the bench view: "Held", which types "h".
struct BenchWord {
    QString name;
    QString typed;
    friend bool operator==(const BenchWord&, const BenchWord&) = default;
};

/// One panel per kind of work. The window shows one at a time, tells it when the session changed, and asks it to select
/// the subject of a place that a person jumped to.
class StationPanel : public QWidget {
    Q_OBJECT
public:
    explicit StationPanel(RecordSession& session, QWidget* parent = nullptr) : QWidget(parent), m_session(session) {}

    /// Which station it is.
    [[nodiscard]] virtual Station station() const = 0;
    /// What it is for and how it is used, in a paragraph.
    [[nodiscard]] virtual QString help() const = 0;
    /// What to mind here; the panel shows it, and so does its help.
    [[nodiscard]] virtual std::vector<Caution> cautions() const = 0;
    /// Shows facts and assessment anew. Called after every change, and once when built; keeps selection and typed text.
    virtual void refresh() = 0;
    /// Selects what a place is about ("3R", "main-3" …) and puts the keyboard there; unknown subjects are ignored.
    virtual void select(const QString& subject) = 0;

    /// The code of the place that is selected ("3R", "main-3L", "rod-5", "throw-2", "pickup"); empty: none in particular.
    [[nodiscard]] virtual QString subject() const { return {}; }

    /// The field that takes the next value here; null where nothing is typed.
    [[nodiscard]] virtual EntryField* entryField() const { return nullptr; }

    /// The words that that field takes now.
    [[nodiscard]] virtual std::vector<BenchWord> benchWords() const { return {}; }

    /// What is shown large above that field in the bench view; null: its place alone.
    [[nodiscard]] virtual QWidget* benchPicture() const { return nullptr; }

signals:
    void subjectChanged(); ///< another place is selected

protected:
    void resizeEvent(QResizeEvent* event) override {
        QWidget::resizeEvent(event);
        CautionLabel::fitAllIn(*this);
        PlanTools::fitAllIn(*this);
    }
    [[nodiscard]] RecordSession& session() const { return m_session; }

private:
    RecordSession& m_session;
};

} // namespace caprail
