// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/announcer.h>

namespace caprail {

Announcer& Announcer::instance() {
    static Announcer announcer;
    return announcer;
}

} // namespace caprail
