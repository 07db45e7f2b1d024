// SPDX-License-Identifier: GPL-3.0-or-later
#include <gauges/gauge_setup.h>

#include <QCoreApplication>
#include <QSettings>
#include <array>

namespace caprail {

namespace {

class GaugeSetupText {
    Q_DECLARE_TR_FUNCTIONS(GaugeSetup)
};

constexpr std::array<const char*, 2> ways{"keyboard", "serial"};
constexpr std::array<const char*, 3> ends{"line", "tab", "pause"};
constexpr std::array<const char*, 3> parities{"none", "even", "odd"};

/// A word that is not known, which a newer program may have written, is the first one.
template <class E, std::size_t n> E fromWord(const std::array<const char*, n>& words, const QVariant& word) {
    for (std::size_t i = 0; i < n; ++i) {
        if (word.toString() == QLatin1String(words[i])) {
            return static_cast<E>(i);
        }
    }
    return E{};
}

template <class E, std::size_t n> QString wordFor(const std::array<const char*, n>& words, E value) {
    return QString::fromLatin1(words[static_cast<std::size_t>(value)]);
}

} // namespace

QString GaugeSetup::name() const {
    return !instrument.isEmpty()        ? instrument
           : way == GaugeWay::keyboard ? GaugeSetupText::tr("the gauge that types")
                                       : GaugeSetupText::tr("the gauge at %1").arg(device);
}

std::vector<GaugeSetup> loadGauges() {
    QSettings settings;
    std::vector<GaugeSetup> gauges;
    const int count = settings.beginReadArray("gauges");
    for (int i = 0; i < count; ++i) {
        settings.setArrayIndex(i);
        GaugeSetup g;
        g.instrument = settings.value("instrument").toString();
        g.way = fromWord<GaugeWay>(ways, settings.value("way"));
        g.end = fromWord<GaugeEnd>(ends, settings.value("end"));
        g.form.pattern = settings.value("pattern", "#").toString().toStdString();
        g.form.unit = settings.value("unit").toString().toStdString();
        g.device = settings.value("device").toString();
        g.speed = settings.value("speed", g.speed).toInt();
        g.dataBits = settings.value("data-bits", g.dataBits).toInt();
        g.stopBits = settings.value("stop-bits", g.stopBits).toInt();
        g.parity = fromWord<GaugeParity>(parities, settings.value("parity"));
        g.isUsed = settings.value("used", true).toBool();
        gauges.push_back(std::move(g));
    }
    settings.endArray();
    return gauges;
}

void saveGauges(const std::vector<GaugeSetup>& gauges) {
    QSettings settings;
    settings.remove("gauges");
    settings.beginWriteArray("gauges", static_cast<int>(gauges.size()));
    for (int i = 0; i < static_cast<int>(gauges.size()); ++i) {
        const GaugeSetup& g = gauges[static_cast<std::size_t>(i)];
        settings.setArrayIndex(i);
        settings.setValue("instrument", g.instrument);
        settings.setValue("way", wordFor(ways, g.way));
        settings.setValue("end", wordFor(ends, g.end));
        settings.setValue("pattern", QString::fromStdString(g.form.pattern));
        settings.setValue("unit", QString::fromStdString(g.form.unit));
        settings.setValue("device", g.device);
        settings.setValue("speed", g.speed);
        settings.setValue("data-bits", g.dataBits);
        settings.setValue("stop-bits", g.stopBits);
        settings.setValue("parity", wordFor(parities, g.parity));
        settings.setValue("used", g.isUsed);
    }
    settings.endArray();
}

} // namespace caprail
