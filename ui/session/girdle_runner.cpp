// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/girdle_runner.h>

namespace caprail {

GirdleRunner& GirdleRunner::of(RecordSession& session) {
    auto* runner = session.findChild<GirdleRunner*>(QString(), Qt::FindDirectChildrenOnly);
    return runner != nullptr ? *runner : *new GirdleRunner(session);
}

GirdleRunner::GirdleRunner(RecordSession& session) : QObject(&session), m_session(session) {
    m_pool.setMaxThreadCount(1);
}

GirdleRunner::~GirdleRunner() {
    m_pool.clear();
    m_pool.waitForDone();
}

const GirdleModel* GirdleRunner::model() {
    auto inputs = girdleInputs(m_session.facts());
    if (!inputs) {
        m_inputs.reset();
        m_plate.reset();
        m_model.reset();
        m_answer.reset();
        m_isBusy = false;
        m_problem = inputs.error().sentence;
        return nullptr;
    }
    if (m_inputs != *inputs) {
        m_inputs = *std::move(inputs);
        solve();
    }
    if (!m_plate) {
        return nullptr;
    }
    putOnSprings();
    return m_model ? &*m_model : nullptr;
}

const GirdleModel* GirdleRunner::finished() {
    if (model() == nullptr && m_isBusy) {
        m_pool.waitForDone();
        if (take(m_answer)) {
            emit ready(); // the event that would have told it finds it taken
        }
    }
    return model();
}

void GirdleRunner::solve() {
    m_plate.reset();
    m_springs.reset();
    m_model.reset();
    m_problem.clear();
    m_pool.clear();
    m_isBusy = true;
    m_answer = std::make_shared<Answer>();
    m_pool.start([this, inputs = *m_inputs, answer = m_answer] {
        auto plate = solvedGirdle(inputs);
        {
            const std::scoped_lock lock(answer->mutex);
            answer->plate = std::move(plate);
        }
        // It travels to the screen's thread as an event, which dies with this object.
        QMetaObject::invokeMethod(
            this,
            [this, answer] {
                if (take(answer)) {
                    emit ready();
                }
            },
            Qt::QueuedConnection);
    });
}

bool GirdleRunner::take(std::shared_ptr<Answer> answer) { // kept: it may be m_answer itself
    if (answer == nullptr || answer != m_answer) {
        return false;
    }
    const std::scoped_lock lock(answer->mutex);
    if (!answer->plate) {
        return false;
    }
    m_isBusy = false;
    m_answer.reset();
    if (*answer->plate) {
        m_plate = **answer->plate;
    } else {
        m_problem = answer->plate->error().sentence;
    }
    return true;
}

void GirdleRunner::putOnSprings() {
    Springs springs = springsUnder(m_session.facts());
    if (m_springs == springs) {
        return;
    }
    m_springs = std::move(springs);
    m_model.reset();
    m_problem.clear();
    if (auto model = m_plate->withSprings(*m_springs)) {
        m_model = *std::move(model);
    } else {
        m_problem = model.error().sentence;
    }
}

} // namespace caprail
