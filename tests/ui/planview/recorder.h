// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A paint device that draws nothing and notes every text with the way it stood.
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <vector>

namespace caprail {

struct WrittenText {
    QString text;
    QPointF at;
    bool isUpright = false; ///< not turned, not mirrored
};

class TextRecorder : public QPaintDevice {
public:
    explicit TextRecorder(QSize size) : m_size(size), m_engine(m_texts) {}
    [[nodiscard]] QPaintEngine* paintEngine() const override { return &m_engine; }
    [[nodiscard]] const std::vector<WrittenText>& texts() const { return m_texts; }
    [[nodiscard]] const WrittenText* find(const QString& text) const {
        for (const WrittenText& written : m_texts) {
            if (written.text == text) {
                return &written;
            }
        }
        return nullptr;
    }

protected:
    int metric(PaintDeviceMetric which) const override {
        switch (which) {
        case PdmWidth:
            return m_size.width();
        case PdmHeight:
            return m_size.height();
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY:
            return 96;
        case PdmDepth:
            return 32;
        default:
            return QPaintDevice::metric(which);
        }
    }

private:
    class Engine : public QPaintEngine {
    public:
        explicit Engine(std::vector<WrittenText>& texts) : QPaintEngine(AllFeatures), m_texts(texts) {}
        bool begin(QPaintDevice*) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState& changed) override {
            if (changed.state().testFlag(DirtyTransform)) {
                m_transform = changed.transform();
            }
        }
        void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
        void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
        void drawPath(const QPainterPath&) override {}
        void drawTextItem(const QPointF& at, const QTextItem& item) override {
            m_texts.push_back({item.text(), m_transform.map(at),
                               m_transform.m11() > 0 && m_transform.m22() > 0 && !m_transform.isRotating()});
        }
        [[nodiscard]] Type type() const override { return User; }

    private:
        std::vector<WrittenText>& m_texts;
        QTransform m_transform;
    };

    QSize m_size;
    std::vector<WrittenText> m_texts;
    mutable Engine m_engine;
};

} // namespace caprail
