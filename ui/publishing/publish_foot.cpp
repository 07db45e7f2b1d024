// SPDX-License-Identifier: GPL-3.0-or-later
#include <publishing/publish_foot.h>

#include <publishing/publisher.h>
#include <text/plain_text.h>

namespace caprail {

PublishFoot::PublishFoot(QWidget* parent) : QPushButton(parent) {
    setObjectName(QStringLiteral("publishFoot"));
    setFlat(true);
    connect(&Publisher::instance(), &Publisher::changed, this, &PublishFoot::refresh);
    refresh();
}

void PublishFoot::refresh() {
    const Publisher& publisher = Publisher::instance();
    const QString sentence = publisher.sentence();
    setText(literal(sentence));
    const Publisher::State& state = publisher.state();
    setTip(this, !state.away.isEmpty()       ? state.away
                 : !state.notNoted.isEmpty() ? state.notNoted
                                             : state.refused.join(QLatin1Char('\n')));
    setVisible(!sentence.isEmpty());
}

} // namespace caprail
