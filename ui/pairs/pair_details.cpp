#include "ui/pairs/pair_details.h"

#include <QLocale>
#include <numbers>

#include "ui/pairs/fact_words.h"
#include "ui/pairs/facts_form.h"
#include "ui/pairs/frame_choice.h"
#include "ui/pairs/pair_edits.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString lines(const std::vector<std::string>& sentences) {
    QStringList text;
    for (const std::string& sentence : sentences) text << from_utf8(sentence);
    return text.join(u'\n');
}

QString retagged(const Photo& photo, const QString& name) {
    QStringList tags;
    if (photo.tags.stage) tags << shown(*photo.tags.stage);
    if (photo.tags.angle) tags << shown(*photo.tags.angle);
    if (tags.isEmpty()) {
        return PairDetails::tr("%1 has no tags now, but the pair is pinned with it.").arg(name);
    }
    return PairDetails::tr("%1 is tagged %2 now, but the pair is pinned with it.")
        .arg(name, tags.join(QStringLiteral(", ")));
}

// What has become of the photo she chose; `photo` is the one that stands there.
QString note_words(const Photo& photo, SideNote note) {
    const QString name = isolated(from_utf8(photo.file.name));
    switch (note) {
        case SideNote::none:
            return {};
        case SideNote::tagged_otherwise:
            return retagged(photo, name);
        case SideNote::not_usable:
            return PairDetails::tr("%1 has a flaw, but you chose it.").arg(name);
        case SideNote::set_aside:
            return PairDetails::tr(
                       "The photo you chose is tagged otherwise now: %1 stands instead.")
                .arg(name);
        case SideNote::removed:
            return PairDetails::tr(
                       "The photo you chose is no longer in the library: %1 stands instead.")
                .arg(name);
    }
    return {};
}

}  // namespace

QString laying_in_words(const LaidPair& laid) {
    const Similarity& lay = laid.alignment.second_onto_first;
    const double degrees = std::abs(lay.turn()) * 180 / std::numbers::pi;
    const QString how = laid.alignment.by_hand ? PairDetails::tr("on the points you set")
                                               : PairDetails::tr("as the program found them");
    return PairDetails::tr(
               "Both heads lie upon each other, %1. The second photo was scaled to %2 % and turned "
               "by %3°, and both were cut. Nothing on hair or skin was changed, and the files are "
               "as they were.")
        .arg(how)
        .arg(qRound(lay.scale() * 100))
        .arg(QLocale().toString(degrees, 'f', 1));
}

PairDetails::PairDetails(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    set_reading_margins(*column, space(1), 0, space(3), space(6));
    column->setSpacing(space(2));
    add_acts(*column);
    add_figures(*column);
    add_frames(*column);
    column->addSpacing(space(3));
    column->addWidget(make_heading(tr("What this look is found by")));
    facts_ = new FactsForm(session_);
    column->addWidget(facts_);
    column->addStretch();
}

void PairDetails::add_acts(QVBoxLayout& column) {
    QPushButton* like = make_button(tr("More like this"));
    QPushButton* progress = make_button(tr("Progress over time"));
    QPushButton* picture = make_button(tr("One picture of both…"));
    pin_ = make_button({});
    refuse_ = make_button({});
    connect(like, &QPushButton::clicked, this, &PairDetails::like_asked);
    connect(progress, &QPushButton::clicked, this, &PairDetails::progress_asked);
    connect(picture, &QPushButton::clicked, this, &PairDetails::picture_asked);
    connect(pin_, &QPushButton::clicked, this,
            [this] { session_.change_records(pin_edit(pair_, !pair_.choice.pinned)); });
    connect(refuse_, &QPushButton::clicked, this,
            [this] { session_.change_records(refuse_edit(pair_, !pair_.choice.refused)); });
    auto* flow = new FlowLayout(space(2));
    for (QPushButton* button : {like, progress, picture, pin_, refuse_}) flow->addWidget(button);
    column.addLayout(flow);
    notice_ = new Notice;
    column.addWidget(notice_);
}

void PairDetails::add_figures(QVBoxLayout& column) {
    column.addSpacing(space(2));
    column.addWidget(make_heading(tr("How alike they were taken")));
    figures_ = make_text({});
    column.addWidget(figures_);
    column.addWidget(make_quiet(
        tr("Published advertising rules ask that before and after do not mislead; which rules hold "
           "is for the law where you work.")));
    column.addSpacing(space(3));
    column.addWidget(make_heading(tr("What was done")));
    done_ = make_text({});
    column.addWidget(done_);
    points_ = make_button(tr("Set the heads by hand"));
    connect(points_, &QPushButton::clicked, this, &PairDetails::points_asked);
    column.addWidget(points_, 0, Qt::AlignLeading);
}

void PairDetails::add_frames(QVBoxLayout& column) {
    column.addSpacing(space(3));
    column.addWidget(make_heading(tr("Another photo")));
    first_ = new FrameChoice(session_);
    second_ = new FrameChoice(session_);
    connect(first_, &FrameChoice::picked, this,
            [this](PhotoId photo) { choose(photo, pair_.choice.second); });
    connect(second_, &FrameChoice::picked, this,
            [this](PhotoId photo) { choose(pair_.choice.first, photo); });
    connect(first_, &FrameChoice::best_asked, this,
            [this] { choose(std::nullopt, pair_.choice.second); });
    connect(second_, &FrameChoice::best_asked, this,
            [this] { choose(pair_.choice.first, std::nullopt); });
    column.addWidget(first_);
    column.addWidget(second_);
}

void PairDetails::choose(std::optional<PhotoId> first, std::optional<PhotoId> second) {
    session_.change_records(choose_frames_edit(pair_, first, second));
}

void PairDetails::show_pair(const Pair& pair) {
    pair_ = pair;
    pin_->setText(pair.choice.pinned ? tr("No longer pinned") : tr("Pin this pair"));
    pin_->setToolTip(pair.choice.pinned ? tr("Let the best photos stand again")
                                        : tr("Keeps both photos, whatever their tags say later"));
    refuse_->setText(pair.choice.refused ? tr("List it again") : tr("Refuse this pair"));
    refuse_->setToolTip(pair.choice.refused ? tr("It stands on the wall again")
                                            : tr("Leaves it out of all lists"));
    const PairFrames frames = frames_for(session_.library(), pair);
    const bool chosen = !pair.choice.pinned;
    first_->show_frames(first_words(pair.made.place), frames.first, pair.made.first,
                        chosen && pair.choice.first.has_value());
    second_->show_frames(second_words(pair.made.place), frames.second, pair.made.second,
                         chosen && pair.choice.second.has_value());
    show_notes(frames);
    facts_->show_look(pair.made.place.look);
}

void PairDetails::show_notes(const PairFrames& frames) {
    QStringList words;
    const auto tell = [&](const std::vector<Photo>& side, PhotoId photo, SideNote note) {
        const auto own = std::ranges::find(side, photo, &Photo::id);
        if (note != SideNote::none && own != side.end()) words << note_words(*own, note);
    };
    tell(frames.first, pair_.made.first, pair_.made.first_note);
    tell(frames.second, pair_.made.second, pair_.made.second_note);
    notice_->say(words.join(u'\n'));
}

void PairDetails::show_laid(const LaidAndMeasured* laid) {
    points_->setEnabled(laid && laid->pair.refused.empty());
    if (!laid) {
        figures_->setText(tr("Being measured…"));
        done_->setText(tr("Both heads are being laid upon each other…"));
        return;
    }
    const Fairness fairness = judge_fairness(laid->figures);
    QString text = lines(fairness.figures);
    if (!fairness.unfair.empty()) {
        text.prepend(tr("Not a fair comparison: too much differs.") + u'\n');
    }
    if (!laid->pair.points_against.empty()) {
        text.prepend(from_utf8(laid->pair.points_against) + u'\n');
    }
    figures_->setText(laid->pair.refused.empty() ? text : from_utf8(laid->pair.refused));
    done_->setText(laid->pair.refused.empty() && laid->pair.alignment.sure()
                       ? laying_in_words(laid->pair)
                       : tr("Nothing: both photos are shown whole."));
}

}  // namespace quarterturn
