// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QThreadPool>
#include <future>
#include <optional>
#include <session/record_session.h>
#include <work/block_load.h>

namespace caprail {

/// The girdle's plate of an open record for all who ask, station and sheet alike. It is solved away from the screen's
/// thread, and again only when layout, plate or the pan rail's fasteners are others; studs and caps are put in series
/// at once. What is outdated is never given.
///
/// All of it belongs to the screen's thread. The other one has a copy of what it works from and leaves what came of it
/// in a future.
class GirdleRunner : public QObject {
    Q_OBJECT
public:
    /// The one of this session; made when it is first asked for, and gone with it.
    static GirdleRunner& of(RecordSession& session);
    ~GirdleRunner() override;

    /// Null where there is none: `isBusy` while it is being worked out, and `ready` is sent then; else `problem` says
    /// why.
    SharedGirdle model();
    /// As above, but waits for what is being worked out: for paper, which cannot be made anew.
    SharedGirdle finished();
    [[nodiscard]] bool isBusy() const { return m_coming.valid(); }
    [[nodiscard]] const std::string& problem() const { return m_problem; }

signals:
    void ready();

private:
    using Plate = Result<SolvedGirdle>;

    explicit GirdleRunner(RecordSession& session);
    void solve();
    /// Waits for the answer to the newest question, and tells that it is there; nothing where it was taken before.
    void take();
    void putOnSprings();
    /// Of an earlier question nothing is left.
    void forget();

    RecordSession& m_session;
    QThreadPool m_pool;
    std::future<Plate> m_coming;  ///< the answer to the newest question, until it is taken
    std::uint64_t m_question = 0; ///< its number
    std::optional<GirdleInputs> m_inputs;
    std::optional<SolvedGirdle> m_plate;
    std::optional<Springs> m_springs; ///< that the model stands on
    SharedGirdle m_model;
    std::string m_problem;
};

} // namespace caprail
