// SPDX-License-Identifier: GPL-3.0-or-later
/// What the window has to do with gauges that send their values.
#include <gauges/gauge_hub.h>
#include <gauges/gauges_dialog.h>

#include <QApplication>
#include <QStatusBar>
#include <window/bench_view.h>
#include <window/confirmation.h>
#include <window/main_window.h>
#include <window/next_bar.h>

namespace caprail {

namespace {

constexpr int gaugeSentenceStays = 15'000; // milliseconds

} // namespace

void MainWindow::setUpGauges() {
    QStringList instruments;
    if (m_session) {
        for (const auto& [name, seen] : m_session->facts().instruments) {
            instruments << QString::fromStdString(name);
        }
    }
    GaugeHub& hub = GaugeHub::instance();
    hub.use({}); // the dialog listens now
    GaugesDialog dialog(loadGauges(), instruments, this);
    if (dialog.exec() == QDialog::Accepted) {
        saveGauges(dialog.gauges());
    }
    hub.use(loadGauges());
}

void MainWindow::sayOfGauge(const QString& sentence, bool isFault) {
    if (isFault && (isActiveWindow() || QApplication::activeWindow() == nullptr)) {
        m_confirmation->refused(sentence);
    }
    if (!m_session) {
        statusBar()->showMessage(sentence, gaugeSentenceStays);
        return;
    }
    if (m_bench->isActive()) {
        m_bench->tell(sentence);
    }
    m_next->showHint(sentence);
}

} // namespace caprail
