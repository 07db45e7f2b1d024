// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <base/date.h>
#include <base/problem.h>
#include <base/say.h>
#include <base/words.h>
#include <optional>
#include <string>
#include <vector>

namespace caprail {

/// When records that were added to are published without being asked.
enum class PublishSchedule { never, eachChange, hourly, daily };
template <> struct WordsOf<PublishSchedule> {
    static constexpr std::array<Word<PublishSchedule>, 4> list{
        {{PublishSchedule::never, Core::mark("never")},
         {PublishSchedule::eachChange, Core::mark("after each change")},
         {PublishSchedule::hourly, Core::mark("every hour")},
         {PublishSchedule::daily, Core::mark("every day")}}};
};

/// A record that waits to be published.
struct WaitingRecord {
    std::string path; ///< bytes
    UtcTime since;    ///< a change waits; 1970: none does
    UtcTime last;     ///< change, or that it was asked for
    bool isAsked = false; ///< by a person: it is due at once
    friend bool operator==(const WaitingRecord&, const WaitingRecord&) = default;
};
/// When a record that waits is due. After each change, it waits for a pause of ten seconds, for two minutes at most: a
/// row of readings is sent at once. Nothing where it is never due by itself.
std::optional<UtcTime> dueAt(const WaitingRecord& record, PublishSchedule schedule);

/// The records that wait to be published, kept in a folder of the user's, one small file each: several windows and
/// programs add to it and take from it at a time, and it outlives them. What cannot be read in it is passed over.
class PublishQueue {
public:
    explicit PublishQueue(std::string folder) : m_folder(std::move(folder)) {}
    [[nodiscard]] const std::string& folder() const { return m_folder; }
    /// A record was added to. Where it waits already, it goes on waiting since then.
    Result<void> addChanged(const std::string& path, UtcTime now) const;
    /// A person asks for it.
    Result<void> addAsked(const std::string& path, UtcTime now) const;
    /// A person asks for it no more: where a change waits, that goes on waiting.
    void takeBack(const WaitingRecord& asked) const;
    /// All that wait: what was asked for, then the longest first.
    [[nodiscard]] std::vector<WaitingRecord> waiting() const;
    /// It was published, or can never be. Where it was added to meanwhile, it goes on waiting.
    void settle(const WaitingRecord& record) const;

private:
    [[nodiscard]] std::string fileOf(const std::string& path) const;
    Result<void> add(WaitingRecord record) const;
    [[nodiscard]] Result<void> put(const WaitingRecord& record) const;
    std::string m_folder;
};

} // namespace caprail
