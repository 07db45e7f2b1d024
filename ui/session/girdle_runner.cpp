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

SharedGirdle GirdleRunner::model() {
    auto inputs = girdleInputs(m_session.facts());
    if (!inputs) {
        forget();
        m_inputs.reset();
        m_problem = inputs.error().sentence;
    } else if (m_inputs != *inputs) {
        forget();
        m_inputs = *std::move(inputs);
        solve();
    } else if (m_plate) {
        putOnSprings();
    }
    return m_model;
}

SharedGirdle GirdleRunner::finished() {
    (void)model(); // asks, where nobody has
    take();
    return model();
}

void GirdleRunner::forget() {
    m_pool.clear();
    m_coming = {};
    m_plate.reset();
    m_springs.reset();
    m_model.reset();
    m_problem.clear();
}

void GirdleRunner::solve() {
    const auto work =
        std::make_shared<std::packaged_task<Plate()>>([inputs = *m_inputs] { return solvedGirdle(inputs); });
    m_coming = work->get_future();
    m_pool.start([this, work, question = ++m_question] {
        (*work)();
        // It travels to the screen's thread as an event, which dies with this object.
        QMetaObject::invokeMethod(
            this,
            [this, question] {
                if (question == m_question) {
                    take();
                }
            },
            Qt::QueuedConnection);
    });
}

void GirdleRunner::take() {
    if (!m_coming.valid()) {
        return;
    }
    if (Plate plate = m_coming.get()) {
        m_plate = *std::move(plate);
    } else {
        m_problem = plate.error().sentence;
    }
    emit ready();
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
        m_model = std::make_shared<const GirdleModel>(*std::move(model));
    } else {
        m_problem = model.error().sentence;
    }
}

} // namespace caprail
