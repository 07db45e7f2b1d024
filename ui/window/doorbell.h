// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>

class QLocalServer;
class QWidget;

namespace caprail {

/// A record has one window. Where it is opened a second time, in this program or, from the file manager, in another, that
/// window comes to the front instead: each hangs a doorbell out, a local socket in the user's runtime folder named by the
/// record's path and file. Without such a folder (XDG_RUNTIME_DIR) there is none, and the second window only reads.
class Doorbell : public QObject {
    Q_OBJECT
public:
    explicit Doorbell(QWidget* window);
    /// From now on for this record; the one before no longer rings.
    void hangAt(const QString& record);

private:
    void answer();

    QWidget* m_window;
    QLocalServer* m_server;
};

/// Brings the window that shows this record to the front, in this program or another of the same person's. False: none
/// does, or the program that has it does not answer within a second and a half.
bool raiseWindowOf(const QString& record);

} // namespace caprail
