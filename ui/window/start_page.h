// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

namespace caprail {

/// What is shown while no record is open: one step to a record — new, opened, recent, or a sample.
class StartPage : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(QWidget* parent = nullptr);

signals:
    void newRequested();
    void openRequested();
    void shopRequested();
    void manualRequested();
    void fileChosen(const QString& path);
    void sampleChosen(const QString& path); ///< opened as a copy, so that the sample stays as it is
};

} // namespace caprail
