// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Signing in the window: by the menu, and offered when a build was signed off and there is a key.
class QMenu;

namespace caprail {

class MainWindow;

/// Adds the action to the menu, and offers a signature after each sign-off.
void addSigning(MainWindow& window, QMenu* file);

/// Asks whether and by which key to sign the record as it is now, and for its passphrase; signs. Where there is no key
/// that is valid today, one may be made if `mayMakeKey`; else nothing is asked.
void offerSignature(MainWindow& window, bool mayMakeKey);

} // namespace caprail
