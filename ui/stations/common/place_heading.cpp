// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/place_heading.h>

#include <QHBoxLayout>
#include <QToolButton>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

PlaceHeading::PlaceHeading(QWidget* parent)
    : QWidget(parent), m_place(new Label(this)), m_figure(new Label(this)), m_words(new Label(this)),
      m_why(new QToolButton(this)) {
    m_why->setObjectName(QStringLiteral("why"));
    QFont place = font(); // that of the figures on the diagram
    place.setPointSizeF(place.pointSizeF() * 1.3);
    place.setBold(true);
    m_place->setFont(place);
    QFont figure = font();
    figure.setPointSizeF(figure.pointSizeF() * 3.0);
    m_figure->setFont(figure);
    m_figure->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_figure->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setWordWrap(true);
    m_words->setMinimumHeight(m_words->fontMetrics().lineSpacing() * 2);
    m_words->setAlignment(Qt::AlignTop);
    auto* row = new QHBoxLayout;
    m_place->setWordWrap(true); // beside a long figure a long name takes two lines
    row->addWidget(m_place, 1);
    row->addWidget(m_figure);
    row->addWidget(m_why); // not beside the words, which need the whole width
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addLayout(row);
    column->addWidget(m_words);
    m_why->setText(tr("Why ±?"));
    setTip(m_why, tr("The uncertainty of this figure, source by source"));
    m_why->hide();
    connect(m_why, &QToolButton::clicked, this, &PlaceHeading::whyAsked);
}

void PlaceHeading::show(const QString& place, const QString& figure, CheckState state, const QString& words) {
    m_place->setText(place);
    m_figure->setSubject(place);
    m_figure->setText(figure);
    m_words->setText(sign(state) + QStringLiteral(" ") + words);
    QPalette palette = m_words->palette();
    palette.setColor(QPalette::WindowText, screenLook().of(state));
    m_words->setPalette(palette);
}

void PlaceHeading::setAskable(bool isAskable) {
    m_why->setVisible(isAskable);
}

QString PlaceHeading::figure() const {
    return m_figure->text();
}

} // namespace caprail
