// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/task.h>

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>
#include <planview/plan_view.h>
#include <session/look.h>
#include <stations/closing/open_time.h>
#include <stations/common/entry_field.h>
#include <stations/common/instrument_box.h>
#include <stations/common/photo_tools.h>
#include <stations/common/station_text.h>

namespace caprail {

ClosingPicture::ClosingPicture(QWidget* parent)
    : QWidget(parent), m_title(new Label(this)), m_how(new Label(this)), m_clock(new OpenTime(this)),
      m_plan(new PlanView(this)), 
      m_list(new List<TaskLine, int>(
          tr("All that this step goes through"), &TaskLine::number,
          {{.text =
                [](const TaskLine& line) {
                    return (line.isNext ? QStringLiteral("▶") : sign(line.isDone ? CheckState::good : CheckState::notDone)) +
                           QStringLiteral("  ") + line.text;
                },
            .ink = [](const TaskLine& line,
                      const Look& look) { return line.isNext ? look.accent : line.isDone ? look.quiet : look.ink; }}},
          this)) {
    for (Label* label : {m_title, m_how, static_cast<Label*>(m_clock)}) {
        label->setWordWrap(true);
    }
    m_title->setSubject(tr("What comes next"));
    m_list->setFocusPolicy(Qt::NoFocus); // it only shows; the field takes the keys
    m_list->setSelectionMode(QAbstractItemView::NoSelection);
    m_plan->setFocusPolicy(Qt::NoFocus);
    auto* row = new QHBoxLayout;
    row->addWidget(m_plan, 5);
    row->addWidget(m_list, 3);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_title);
    column->addWidget(m_how);
    column->addWidget(m_clock);
    column->addLayout(row, 1);
}

QString ClosingPicture::title() const {
    return m_title->text();
}

void ClosingPicture::show(const RecordSession& session, const ClosingTask& task) {
    m_title->setText(taskTitle(session, task));
    m_how->setText(taskHow(session, task));
    m_how->setVisible(!m_how->text().isEmpty());
    const Facts& facts = session.facts();
    const auto bead = facts.closing.find(ClosingStep::beadLaid);
    if (task.step == ClosingStep::girdleLowered && bead != facts.closing.end()) {
        m_clock->run(bead->second.time, bead->second.what.openMinutes);
    } else {
        m_clock->stop();
    }
    if (facts.layout) {
        m_plan->setContent(taskContent(session, task));
    } else {
        m_plan->setEmpty(tr("Set the engine layout at the engine station."));
    }
    showLines(session, task);
}

void ClosingPicture::showLines(const RecordSession& session, const ClosingTask& task) {
    std::vector<TaskLine> lines = taskLines(session, task);
    const auto next = std::ranges::find(lines, true, &TaskLine::isNext);
    const int nextLine = next == lines.end() ? -1 : static_cast<int>(next - lines.begin());
    m_list->put(std::move(lines));
    if (nextLine >= 0) {
        m_list->scrollTo(m_list->model()->index(nextLine, 0), QAbstractItemView::PositionAtCenter);
    }
    m_list->setVisible(m_list->count() > 0);
}

void ClosingPicture::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    scale();
}

/// Read at arm's length: as large as the room allows.
void ClosingPicture::scale() {
    const double em = std::clamp(std::min(height() / 26.0, width() / 46.0), 9.0, 34.0);
    const auto sized = [&](QWidget* widget, double factor, bool isBold) {
        QFont sizedFont = font();
        sizedFont.setPixelSize(static_cast<int>(em * factor));
        sizedFont.setBold(isBold);
        widget->setFont(sizedFont);
    };
    sized(m_title, 2.1, true);
    sized(m_how, 1.15, false);
    sized(m_clock, 1.8, true);
    sized(m_list, 1.2, false);
}

ClosingTaskPage::ClosingTaskPage(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_picture(new ClosingPicture(this)), m_field(new EntryField(this)),
      m_instrument(new InstrumentBox(session, {InstrumentType::torqueWrench}, this)),
      m_photo(new QPushButton(tr("Ph&oto…"), this)) {
    m_photo->setAutoDefault(false);
    connect(m_photo, &QPushButton::clicked, this, &ClosingTaskPage::takePhoto);
    connect(m_instrument, &QComboBox::activated, this, [this] {
        ask();
        m_field->setFocus();
    });
    auto* row = new QHBoxLayout;
    row->addWidget(m_field, 1);
    row->addWidget(m_instrument);
    row->addWidget(m_photo);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_picture, 1);
    column->addLayout(row);
    m_field->readWith([this] { return m_instrument; });
    setFocusProxy(m_field);
    refresh();
}

void ClosingTaskPage::refresh() {
    m_task = closingTask(m_session.facts(), m_session.assessment());
    if (m_chosen && ownStandingOf(m_session.facts(), *m_chosen, m_session.units()).state == CheckState::good) {
        m_chosen.reset();
    }
    if (m_chosen && m_task.kind != ClosingTask::Kind::closed) {
        m_task.kind = ClosingTask::Kind::own;
        m_task.own = m_chosen;
    }
    m_instrument->refresh();
    m_instrument->setVisible(m_task.kind == ClosingTask::Kind::fastener || m_task.kind == ClosingTask::Kind::turning ||
                             m_task.kind == ClosingTask::Kind::own);
    const auto* own = m_task.own ? m_session.facts().ownCheckNamed(m_task.own->check) : nullptr;
    m_photo->setVisible(own != nullptr && own->what.sort == OwnCheckSort::photo);
    m_picture->show(m_session, m_task);
    const bool isAsked = m_task.kind != ClosingTask::Kind::locked && m_task.kind != ClosingTask::Kind::closed;
    m_field->setVisible(isAsked);
    m_field->setEnabled(isAsked);
    ask();
}

void ClosingTaskPage::askOwnCheck(const OwnPlace& place) {
    m_chosen = place;
    refresh();
}

/// A photo chosen here is the answer.
void ClosingTaskPage::takePhoto() {
    if (!m_task.own) {
        return;
    }
    const QStringList paths = askForPhotos(this);
    if (paths.isEmpty()) {
        return;
    }
    const auto* set = m_session.facts().ownCheckNamed(m_task.own->check);
    const std::string caption = set == nullptr ? std::string() : titleOf(set->what, m_task.own->place);
    if (const auto added = addPhotoFiles(m_session, paths, photoPlaceOf(*m_task.own), caption); !added) {
        m_field->showProblem(qtText(added.error().sentence));
        return;
    }
    m_field->submit();
}

void ClosingTaskPage::ask() {
    const bool isTorque = m_task.kind == ClosingTask::Kind::fastener || m_task.kind == ClosingTask::Kind::turning;
    const auto read = [this, task = m_task](const QString& text) {
        return closingEntry(m_session.facts(), task, coreText(text), m_instrument->instrument(), m_session.units());
    };
    m_field->ask(
        taskField(m_session, m_task), isTorque ? qtText(symbol(m_session.units().torque)) : QString(),
        [this, read](const QString& text) {
            return read(text).map([this](const Body& entry) { return taskEcho(entry, m_session.units()); });
        },
        [this, read](const QString& text) -> Result<void> {
            auto entry = read(text);
            if (!entry) {
                return tl::unexpected(entry.error());
            }
            const auto stored = m_session.append(std::move(*entry));
            return stored ? Result<void>() : Result<void>(tl::unexpected(stored.error()));
        });
}

} // namespace caprail
