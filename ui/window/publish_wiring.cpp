// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/publish_wiring.h>

#include <QStatusBar>
#include <publishing/publish_dialog.h>
#include <publishing/publish_foot.h>
#include <publishing/publisher.h>
#include <records/shop_window.h>
#include <window/main_window.h>

namespace caprail {

namespace {

/// The record that may be published from this window; empty: there is none.
QString recordOf(const MainWindow& window) {
    return window.session() == nullptr || window.isTour() ? QString() : window.session()->path();
}

} // namespace

void addPublishFoot(QMainWindow& window, std::function<QString()> record, std::function<QString()> folder) {
    auto* foot = new PublishFoot;
    window.statusBar()->addPermanentWidget(foot);
    QObject::connect(foot, &PublishFoot::clicked, &window,
                     [&window, record = std::move(record), folder = std::move(folder)] {
                         showPublishDialog(record(), folder(), &window);
                     });
}

void publishFrom(MainWindow& window) {
    showPublishDialog(recordOf(window), ShopWindow::lastFolder(), &window);
}

void publishChangesOf(MainWindow& window) {
    addPublishFoot(
        window, [&window] { return recordOf(window); }, &ShopWindow::lastFolder);
    QObject::connect(&window, &MainWindow::recordChanged, &window, [&window] {
        RecordSession* session = window.session();
        if (session != nullptr) {
            QObject::connect(session, &RecordSession::stored, &window, [&window] {
                if (const QString record = recordOf(window); !record.isEmpty()) {
                    Publisher::instance().noteChanged(record);
                }
            });
        }
    });
}

} // namespace caprail
