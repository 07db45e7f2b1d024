// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
class QWidget;

namespace caprail {

/// Puts Tab through a page in the order in which its layouts hold its parts, which is the order of reading: the order
/// in which the parts happened to be made is another. Called once, with the page complete. What has no layout of its
/// own (a table, a field, a button) is one stop; what is not reached by Tab is passed over.
void orderAsRead(QWidget& page);

} // namespace caprail
