#include "ui/portfolio_screen/candidate_shelves.h"

#include <QPainter>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/photo_words.h"

namespace quarterturn {
namespace {

constexpr int least_candidate_steps = 42;
constexpr int candidate_gap_steps = 4;
// "Mira Okonjo-Lindqvist was not asked whether …" in two, and "Not signed off yet".
constexpr int lines_of_state = 3;

}  // namespace

CandidateShelves::CandidateShelves(Session& session, ShownCandidates& candidates, QWidget* parent)
    : ShelfView(parent), session_(session), candidates_(candidates) {
    setAccessibleName(tr("Candidates"));
    setModel(&candidates_);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        if (const int position = candidates_.position_of(photo); position >= 0) {
            update_tile(position);
        }
    });
    connect(this, &ShelfView::picked, this,
            [this](int position) { emit toggled(candidates_.at(position).photo.id); });
}

// A shelf that is empty is left out.
std::vector<int> CandidateShelves::counts() const {
    std::vector<int> counts;
    const int ready = candidates_.ready();
    const int others = candidates_.rowCount() - ready;
    if (ready > 0) counts.push_back(ready);
    if (others > 0) counts.push_back(others);
    return counts;
}

void CandidateShelves::arrange(ShelfLayout& layout) const {
    const int small = line_height(TextRole::small);
    layout.arrange({.width = viewport()->width(),
                    .margin = space(2),
                    .least_tile = space(least_candidate_steps),
                    .gap = space(candidate_gap_steps),
                    .heading = line_height(TextRole::heading) + space(4),
                    .below_tile = small + 4 + lines_of_state * small},
                   counts());
}

void CandidateShelves::paint_heading(QPainter& painter, int shelf, const QRect& area) const {
    const bool ready = shelf == 0 && candidates_.ready() > 0;
    const int others = candidates_.rowCount() - candidates_.ready();
    painter.setFont(text_font(TextRole::heading));
    painter.setPen(ink_colour(palette()));
    painter.drawText(area.adjusted(0, 0, 0, -space(2)),
                     Qt::AlignBottom | Qt::AlignLeading | Qt::TextSingleLine,
                     ready ? tr("%n photo(s) may go", nullptr, candidates_.ready())
                           : tr("Something stands against %n photo(s)", nullptr, others));
}

void CandidateShelves::paint_tile(QPainter& painter, int position, const QRect& tile) const {
    const int small = line_height(TextRole::small);
    const QRect words = tile.adjusted(0, tile.height() - lines_of_state * small, 0, 0);
    const QFont font = text_font(TextRole::small);
    PhotoLook look = look_of(candidates_.at(position).photo);
    look.caption = candidates_.caption(position);
    look.picture = session_.pictures().at_hand(candidates_.at(position).photo.id, small_long_edge);
    look.current = currentIndex().row() == position;
    look.selected = candidates_.is_selected(position);
    if (look.selected) look.asked = tr("In the selection");
    draw_photo(painter, tile.adjusted(0, 0, 0, -lines_of_state * small), look, palette(), font);
    painter.save();
    painter.setClipRect(words, Qt::IntersectClip);
    painter.setFont(font);
    painter.setPen(quiet_colour(palette()));
    painter.drawText(words, Qt::AlignTop | Qt::AlignHCenter | Qt::TextWordWrap,
                     candidates_.state(position).join(QChar(u'\n')));
    painter.restore();
}

void CandidateShelves::want_what_is_seen() {
    std::vector<PictureWish> wishes;
    const auto in_view = seen();
    for (int i = in_view.first_photo; i < in_view.end_photo; ++i) {
        wishes.push_back({candidates_.at(i).photo, small_long_edge});
    }
    session_.pictures().want(this, wishes);
}

void CandidateShelves::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    ShelfView::currentChanged(current, previous);
    if (current.isValid()) emit looked_at(candidates_.at(current.row()).photo.id);
}

}  // namespace quarterturn
