// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QThreadPool>
#include <memory>
#include <mutex>
#include <optional>
#include <session/record_session.h>
#include <work/block_load.h>

namespace caprail {

/// The girdle's plate of an open record for all who ask, station and sheet alike. It is solved away from the screen's
/// thread, and again only when layout, plate or the pan rail's fasteners are others; studs and caps are put in series
/// at once. What is outdated is never given.
class GirdleRunner : public QObject {
    Q_OBJECT
public:
    /// The one of this session; made when it is first asked for, and gone with it.
    static GirdleRunner& of(RecordSession& session);
    ~GirdleRunner() override;

    /// Null where there is none: `isBusy` while it is being worked out, and `ready` is sent then; else `problem` says
    /// why. Good until it is asked again.
    const GirdleModel* model();
    /// As above, but waits for what is being worked out: for paper, which cannot be made anew.
    const GirdleModel* finished();
    [[nodiscard]] bool isBusy() const { return m_isBusy; }
    [[nodiscard]] const std::string& problem() const { return m_problem; }

signals:
    void ready();

private:
    /// Where a thread leaves what it worked out.
    struct Answer {
        std::mutex mutex;
        std::optional<Result<SolvedGirdle>> plate;
    };

    explicit GirdleRunner(RecordSession& session);
    void solve();
    /// Takes what was worked out; false: it is not there, or for an earlier question.
    bool take(std::shared_ptr<Answer> answer);
    void putOnSprings();

    RecordSession& m_session;
    QThreadPool m_pool;
    std::shared_ptr<Answer> m_answer; ///< to the newest question
    std::optional<GirdleInputs> m_inputs;
    std::optional<SolvedGirdle> m_plate;
    std::optional<Springs> m_springs; ///< that the model stands on
    std::optional<GirdleModel> m_model;
    std::string m_problem;
    bool m_isBusy = false;
};

} // namespace caprail
