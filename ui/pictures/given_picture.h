// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A diagram or a chart as a picture for a message, a document or a drawing program.
#include <QByteArray>
#include <QImage>
#include <QString>
#include <base/problem.h>
#include <functional>

class QPaintDevice;
class QWidget;

namespace caprail {

struct GivenPicture {
    QString name;                              ///< its title, and what its file is called at first
    QString description;                       ///< what it shows, for who cannot see it
    QSize size;                                ///< pixels of the screen; empty: there is nothing to give
    std::function<void(QPaintDevice&)> paint;  ///< all of it, ground included, in those pixels
};

/// Twice as fine as the screen's, so that it can be read on paper; null where there is nothing to give.
QImage imageOf(const GivenPicture& picture);
/// The same as lines and letters; empty where there is nothing to give.
QByteArray svgOf(const GivenPicture& picture);
/// As the ending of the name says, ".svg" or ".png"; an earlier file of that kind is replaced. Refuses another ending, and
/// what store/output_file.h does.
Result<void> writePicture(const GivenPicture& picture, const QString& path);

/// Gives the widget a context menu (the right button, the menu key) with “copy as picture” (Ctrl+C too), “save as SVG” and
/// “save as PNG”. `picture` is asked when one of them is chosen.
void offerPicture(QWidget* widget, std::function<GivenPicture()> picture);

} // namespace caprail
