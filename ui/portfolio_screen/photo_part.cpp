#include "ui/portfolio_screen/photo_part.h"

#include "indexer/store/hair_only_table.h"
#include "ui/consent/consent_words.h"
#include "ui/portfolio_screen/seen_form.h"
#include "ui/portfolio_screen/whose_form.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// "Ask Ada about social media": what clears it, where asking does.
QString way_out_of(const Against& against, const PhotoToShow& shown_photo, Use use) {
    const auto person = std::ranges::find_if(
        shown_photo.people, [&](const ShownPerson& each) { return against.client == each.client; });
    if (person == shown_photo.people.end()) return {};
    const QString name = isolated(from_utf8(person->name));
    switch (against.obstacle) {
        case Obstacle::not_asked:
            //: a client, and a use such as social media
            return PhotoPart::tr("Ask %1 about %2").arg(name, shown(use));
        case Obstacle::declined:
        case Obstacle::withdrawn:
            return {};  // she has said no
        default:
            //: a client
            return PhotoPart::tr("See what %1 allows").arg(name);
    }
}

}  // namespace

PhotoPart::PhotoPart(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      hint_(make_quiet(tr("Choose a photo to see what stands against it, whose it is, and who is "
                          "seen in it."))),
      about_(new QWidget),
      name_(make_heading({})),
      verdict_(make_text({})),
      obstacles_(make_column(1)),
      hair_only_(make_button(tr("Hair only…"))),
      toggle_(make_button(tr("Put into the selection"))),
      whose_(new WhoseForm(session)),
      seen_(new SeenForm(session)) {
    auto* column = new QVBoxLayout(about_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(name_);
    column->addWidget(verdict_);
    column->addLayout(obstacles_);
    column->addWidget(hair_only_, 0, Qt::AlignLeading);
    column->addWidget(toggle_, 0, Qt::AlignLeading);
    column->addSpacing(space(3));
    column->addWidget(make_heading(tr("Whose photo")));
    column->addWidget(whose_);
    column->addSpacing(space(3));
    column->addWidget(make_heading(tr("Who is seen")));
    column->addWidget(seen_);
    connect(hair_only_, &QPushButton::clicked, this, &PhotoPart::hair_only_asked);
    connect(toggle_, &QPushButton::clicked, this, &PhotoPart::toggled);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(hint_);
    all->addWidget(about_);
}

void PhotoPart::show_photo(const std::optional<Photo>& photo, Use use, bool selected) {
    hint_->setVisible(!photo);
    about_->setVisible(photo.has_value());
    if (!photo) return;
    photo_ = *photo;
    name_->setText(isolated(from_utf8(photo->file.name)));
    toggle_->setText(selected ? tr("Take out of the selection") : tr("Put into the selection"));
    PhotoGate gate(session_.library());
    const PhotoToShow shown_photo = gate.to_show(*photo);
    show_verdict(gate.way_out(*photo, use, session_.today()), shown_photo, use);
    whose_->show_photo(*photo);
    seen_->show_photo(*photo, shown_photo);
}

void PhotoPart::show_verdict(const WayOut& way, const PhotoToShow& shown_photo, Use use) {
    const Verdict& verdict = way.verdict;
    const QString where = where_words(use);
    verdict_->setText(!verdict.may() ? tr("It may not be shown %1 yet:").arg(where)
                      : way.hair_only
                          ? tr("The picture that leaves her face out may be shown %1.").arg(where)
                          //: where a photo is to be shown, such as "on a website"
                          : tr("It may be shown %1.").arg(where));
    empty_layout(obstacles_);
    for (const Against& against : verdict.against) add_obstacle(against, shown_photo, use);
    const bool face = std::ranges::any_of(
        verdict.against, [](const Against& against) { return against.obstacle == Obstacle::face; });
    hair_only_->setVisible(face ||
                           HairOnlyTable(session_.library().database()).of(photo_.id).has_value());
}

void PhotoPart::add_obstacle(const Against& against, const PhotoToShow& shown_photo, Use use) {
    obstacles_->addWidget(make_text(from_utf8(against.words)));
    const QString way = way_out_of(against, shown_photo, use);
    if (way.isEmpty()) return;
    auto* link = new SentenceLink(way);
    connect(link, &SentenceLink::clicked, this, [this, client = against.client, use] {
        session_.go_to({.moment = Moment::consent, .client = client, .use = use});
    });
    obstacles_->addWidget(link);
}

}  // namespace quarterturn
