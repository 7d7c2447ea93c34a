#include "ui/running_order/gaps_part.h"

#include <QSpinBox>

#include "ui/running_order/time_words.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int offered_minutes_of_hair = 45;
constexpr int most_minutes_of_hair = 12 * 60;

}  // namespace

GapsPart::GapsPart(QWidget* parent) : QWidget(parent), column_(make_column(1)) {
    column_->setContentsMargins(0, 0, 0, 0);
    setLayout(column_);
}

void GapsPart::show_gaps(const WeddingMorning& morning) {
    const bool empty_party = morning.wedding.party.empty();
    setVisible(empty_party || !morning.gaps.empty());
    if (sentences_ == morning.cannot && empty_party == empty_party_) return;
    sentences_ = morning.cannot;
    empty_party_ = empty_party;
    empty_layout(column_);
    if (empty_party) {
        QPushButton* add = make_next_button(tr("Add the party"));
        connect(add, &QPushButton::clicked, this, &GapsPart::party_wanted);
        column_->addWidget(add, 0, Qt::AlignLeading);
    }
    for (std::size_t i = 0; i < sentences_.size(); ++i) {
        const QString sentence = from_utf8(sentences_[i]);
        const MorningGap& gap = morning.gaps[i];
        add_sentence(sentence, gap);
        gap.of_minutes ? add_minutes(sentence, gap) : add_ready_by(sentence, gap);
    }
}

void GapsPart::add_sentence(const QString& sentence, const MorningGap& gap) {
    auto* link = new SentenceLink(sentence);
    connect(link, &SentenceLink::clicked, this,
            [this, look = gap.look] { look ? emit led_to_look(*look) : emit led_to_wedding(); });
    column_->addWidget(link);
}

QHBoxLayout* GapsPart::add_row() {
    QHBoxLayout* row = make_row(2);
    row->setContentsMargins(space(5), 0, 0, space(2));
    column_->addLayout(row);
    return row;
}

void GapsPart::add_minutes(const QString& about, const MorningGap& gap) {
    auto* minutes = new QSpinBox;
    minutes->setRange(1, most_minutes_of_hair);
    minutes->setSingleStep(5);
    minutes->setValue(offered_minutes_of_hair);
    minutes->setSuffix(tr(" min"));
    minutes->setAccessibleName(tr("Her minutes"));
    minutes->setAccessibleDescription(about);
    QPushButton* take = make_button(tr("Plan with these minutes"));
    take->setAccessibleDescription(about);
    minutes->setMinimumHeight(take->sizeHint().height());
    connect(take, &QPushButton::clicked, this, [this, minutes, client = gap.client] {
        minutes->interpretText();
        emit minutes_given(client, minutes->value());
    });
    QHBoxLayout* row = add_row();
    row->addWidget(minutes);
    row->addWidget(take);
    row->addStretch();
}

void GapsPart::add_ready_by(const QString& about, const MorningGap& gap) {
    auto* time = new TimeWords(tr("When she must be ready"));
    time->setAccessibleDescription(about);
    time->show_time(std::nullopt, tr("as in 12:30"));
    connect(time, &TimeWords::not_understood, this, &GapsPart::not_understood);
    connect(time, &TimeWords::given, this, [this, client = gap.client](std::optional<int> minute) {
        if (minute) emit ready_by_given(client, *minute);
    });
    QHBoxLayout* row = add_row();
    row->addWidget(make_quiet(tr("Ready by")));
    row->addWidget(time);
    row->addStretch();
}

}  // namespace quarterturn
