// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/caution_label.h>

#include <QCoreApplication>
#include <QFontInfo>
#include <algorithm>
#include <text/plain_text.h>

namespace caprail {

namespace {

QString foldedText() {
    return QCoreApplication::translate("CautionLabel", "Cautions …");
}

} // namespace

CautionLabel::CautionLabel(const std::vector<Caution>& cautions, QWidget* parent)
    : Label(parent), m_text(cautionText(cautions)) {
    setWordWrap(true);
    setForegroundRole(QPalette::PlaceholderText);
    setAccessibleDescription(m_text);
    fold(false);
}

void CautionLabel::setMostLines(int lines) {
    m_mostLines = lines;
}

void CautionLabel::fold(bool isFolded) {
    m_isFolded = isFolded;
    setText(isFolded && !m_text.isEmpty() ? foldedText() : m_text);
    setToolTip(isFolded ? wrappedTip(m_text) : QString());
}

bool CautionLabel::isCramped() const {
    if (m_mostLines == 0) {
        return false;
    }
    const QRect text = fontMetrics().boundingRect(0, 0, width(), QWIDGETSIZE_MAX, Qt::TextWordWrap, m_text);
    return text.height() > m_mostLines * fontMetrics().lineSpacing();
}

void CautionLabel::foldOrUnfold() {
    const bool isFolded = m_isStationSmall || isCramped();
    if (isFolded != m_isFolded) {
        fold(isFolded);
    }
}

void CautionLabel::resizeEvent(QResizeEvent* event) {
    Label::resizeEvent(event);
    foldOrUnfold();
}

QSize CautionLabel::sizeHint() const {
    return m_mostLines == 0 ? Label::sizeHint() : minimumSizeHint();
}

QSize CautionLabel::minimumSizeHint() const {
    return m_mostLines == 0 ? Label::minimumSizeHint()
                            : QSize(fontMetrics().horizontalAdvance(foldedText()), fontMetrics().lineSpacing());
}

bool CautionLabel::isWide(const QWidget& station) {
    constexpr int roomyWidth = 1060, usualText = 12; // pixels
    return station.width() * usualText >= roomyWidth * std::max(usualText, QFontInfo(station.font()).pixelSize());
}

void CautionLabel::fitAllIn(const QWidget& station) {
    constexpr int roomyHeight = 520; // pixels
    int height = station.height();   // that is seen of it: a station may be higher than what it is scrolled in
    for (const QWidget* around = station.parentWidget(); around != nullptr; around = around->parentWidget()) {
        height = std::min(height, around->height());
    }
    const bool isLow = height < roomyHeight;
    const bool isNarrow = !isWide(station);
    for (Label* label : station.findChildren<Label*>()) {
        if (auto* caution = dynamic_cast<CautionLabel*>(label)) {
            // One that knows how many lines it may take goes by the width that it has, in whatever station.
            caution->m_isStationSmall = isLow || (isNarrow && caution->m_mostLines == 0);
            caution->foldOrUnfold();
        }
    }
}

} // namespace caprail
