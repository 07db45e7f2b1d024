// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QFocusFrame>
#include <QPointer>

namespace caprail {

/// A ring around whatever has the keyboard, in the ink of what is selected, on both looks alike: a list, a drawing or a
/// page of its own shows nothing by itself. It lies over what it surrounds and takes no clicks. (A QFocusFrame, which
/// screen readers pass over; Qt's own lies under its widget and is cut off at the edge of what that lies in.)
class FocusRing : public QFocusFrame {
    Q_OBJECT
public:
    static constexpr int width = 2; ///< pixels
    /// One for each window of the program, from now on; only the first call does anything.
    static void install();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    explicit FocusRing(QWidget* window);
    void follow(QWidget* target);
    void surround();
    QPointer<QWidget> m_target;
    QList<QPointer<QWidget>> m_watched; ///< the target, and all that it lies in
};

} // namespace caprail
