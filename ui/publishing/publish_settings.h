// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <shopserver/publish_queue.h>

namespace caprail {

/// Where records are published to, and when they are without being asked; kept in the user's configuration.
struct PublishSettings {
    QString service; ///< empty: no database was named yet
    PublishSchedule schedule = PublishSchedule::never;

    static PublishSettings load();
    /// Refuses, with a sentence, a name that `parseService` refuses, above all one with a password in it: that is never
    /// kept; and says so when the disk does not take them.
    Result<void> save() const;
    friend bool operator==(const PublishSettings&, const PublishSettings&) = default;
};

/// The records that wait, of all windows of this user.
PublishQueue publishQueue();

} // namespace caprail
