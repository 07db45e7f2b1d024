// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The window on a sample as a screen reader's toolkit has it.
#include "../pictures.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <stations/common/station.h>
#include <window/main_window.h>
#include <window/preferences.h>

namespace caprail {

/// Every station, and every page of the girdle's.
inline const std::vector<Destination>& allDestinations() {
    static const std::vector<Destination> destinations = [] {
        std::vector<Destination> list;
        for (const auto& station : allWords<Station>()) {
            list.push_back({station.value, {}});
        }
        for (const char* page : {"4L", "2R", "shims", "flushness"}) {
            list.push_back({Station::girdle, page});
        }
        return list;
    }();
    return destinations;
}

inline std::string nameOf(const Destination& destination) {
    return std::string(word(destination.station)) + " " + destination.subject;
}

/// "QLineEdit in GirdleStation": enough to find it.
inline std::string describe(const QWidget* widget) {
    std::string words = widget->metaObject()->className();
    for (const QWidget* at = widget->parentWidget(); at != nullptr; at = at->parentWidget()) {
        words += std::string(" in ") + at->metaObject()->className();
    }
    return words;
}

inline bool takesTab(const QWidget* widget) {
    return widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) != 0 &&
           widget->focusProxy() == nullptr;
}

class Accessibility : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(m_folder.path());
        applyLook(LookChoice::light);
        const QString copy = m_folder.filePath(QStringLiteral("record.caprail"));
        ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/moved-in-verify-round.caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        m_window = std::make_unique<MainWindow>();
        m_window->setAttribute(Qt::WA_DeleteOnClose, false);
        m_window->resize(1280, 800);
        ASSERT_TRUE(m_window->openFile(copy));
        m_window->show();
        m_window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    }
    void go(Station station, const QString& subject = {}) {
        m_window->showDestination({station, subject.toStdString()});
        QApplication::processEvents();
    }
    /// All in the window that the Tab key may reach.
    [[nodiscard]] std::vector<QWidget*> controls() const {
        std::vector<QWidget*> found;
        for (QWidget* widget : m_window->findChildren<QWidget*>()) {
            if (widget->window() == m_window.get() && takesTab(widget)) {
                found.push_back(widget);
            }
        }
        return found;
    }

    QTemporaryDir m_folder;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace caprail
