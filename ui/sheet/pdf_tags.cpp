// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/pdf_tags.h>

#include <QPainter>

namespace caprail::sheet {

namespace {

bool holdsElements(PdfRole role) {
    return role == PdfRole::document || role == PdfRole::table || role == PdfRole::row;
}

void paintMark(QPainter& painter, int along, std::size_t element) {
    painter.save();
    painter.resetTransform();
    painter.setClipping(false);
    painter.setPen(QPen(Qt::black, 0));
    const QPointF at(along, static_cast<qreal>(element));
    painter.drawLine(at, at - QPointF(1, 0));
    painter.restore();
}

} // namespace

Tagged::Tagged(QPainter& painter, PdfRole role, const QString& words, PdfPart part)
    : m_painter(painter), m_writer(dynamic_cast<TaggedPdfWriter*>(painter.device())) {
    if (m_writer == nullptr) {
        return;
    }
    auto& elements = m_writer->m_elements;
    std::size_t element = elements.size();
    bool isNew = true;
    if (part.thing != nullptr) {
        const auto [at, isFirst] = m_writer->m_known.try_emplace({role, part}, element);
        element = at->second;
        isNew = isFirst;
    }
    if (isNew) {
        elements.push_back({role, m_writer->m_open.back(), words});
    }
    m_writer->m_open.push_back(element);
    if (!holdsElements(role) && (isNew || role != PdfRole::headCell)) {
        paintMark(m_painter, tagBegins, element);
        m_isMarked = true;
    }
}

Tagged::~Tagged() {
    if (m_writer == nullptr) {
        return;
    }
    if (m_isMarked) {
        paintMark(m_painter, tagEnds, m_writer->m_open.back());
    }
    m_writer->m_open.pop_back();
}

} // namespace caprail::sheet
