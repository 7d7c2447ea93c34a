#include "ui/pairs/pair_sides.h"

#include "ui/pairs/fact_words.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/veil.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// Heads fill about half of a photo's height.
int edge_for(const QWidget& view) {
    constexpr double of_height = 1.8;
    return qRound(std::max(view.height(), space(100)) * of_height * view.devicePixelRatioF());
}

PairSide side_of(Session& session, const QWidget& view, const Photo& photo, const QString& which,
                 bool dim) {
    const QString when =
        photo.moment ? shown(date_of(*photo.moment)) : PairView::tr("time unknown");
    const QImage picture = session.pictures().at_hand(photo.id, edge_for(view));
    return {dim ? veiled(picture) : picture, photo.tags.mirrored, which, when, {}};
}

std::optional<LaidPair> surely_laid(const Pair& pair, const LaidAndMeasured* laid) {
    if (!laid || !laid->pair.refused.empty() || !laid->pair.alignment.sure()) return std::nullopt;
    LaidPair sure = laid->pair;
    const bool unlike = pair.made.place.kind == PairKind::before_and_after;
    if (unlike) sure.no_hint = "the hair is another before than after";
    return sure;
}

}  // namespace

void want_large(Session& session, const QWidget& view, const TwoPhotos& two) {
    const int edge = edge_for(view);
    session.pictures().want(&view, {{two.first, edge}, {two.second, edge}});
}

void show_large(Session& session, PairView& view, const Pair& pair, const TwoPhotos& two,
                const LaidAndMeasured* laid, bool dim) {
    view.show_pair(side_of(session, view, two.first, first_words(pair.made.place), dim),
                   side_of(session, view, two.second, second_words(pair.made.place), dim),
                   surely_laid(pair, laid));
}

}  // namespace quarterturn
