#include "ui/round_the_head/plan_part.h"

#include <QVBoxLayout>

#include "indexer/rules/ring.h"
#include "ui/widgets/head_plan.h"
#include "ui/widgets/photo_words.h"

namespace quarterturn {
namespace {

CoverageReport of_stage(CoverageReport report, Stage stage) {
    std::erase_if(report.lines,
                  [&](const CoverageLine& line) { return line.wanted.shot.stage != stage; });
    return report;
}

}  // namespace

PlanPart::PlanPart(Session& session, const HeadRound& round, QWidget* parent)
    : QWidget(parent), session_(session), round_(round), plan_(new HeadPlan) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(plan_);
    connect(&session_.pictures(), &PictureLoader::arrived, this, &PlanPart::show_places);
}

void PlanPart::show_round() {
    plan_->show_ring(ring_of(of_stage(round_.round().state.coverage, round_.stage())));
    show_places();
    want_pictures();
}

int PlanPart::picture_edge(Angle angle) const {
    const QSize size = plan_->place_size(angle);
    return qRound(std::max(size.width(), size.height()) * devicePixelRatioF());
}

PlanPlaceState PlanPart::state_at(Angle angle) const {
    PlanPlaceState state;
    for (const CoverageLine& line : round_.round().state.coverage.lines) {
        if (line.wanted.shot != Shot{round_.stage(), angle}) continue;
        state.verdict = line.verdict;
        state.need = line.wanted.need;
    }
    const auto lying = round_.lying_at(angle);
    state.photos = static_cast<int>(lying.size());
    state.has_photo = !lying.empty();
    if (!lying.empty()) {
        const Photo* in_hand = round_.in_hand();
        const bool held = in_hand && std::ranges::any_of(lying, [&](const Photo& photo) {
                              return photo.id == in_hand->id;
                          });
        const Photo& photo = held ? *in_hand : lying.front();
        state.photo = look_of(photo);
        state.photo.current = held;
        state.photo.others_in_burst = state.photos - 1;
        state.photo.picture = session_.pictures().at_hand(photo.id, picture_edge(angle));
    }
    const auto suggested = round_.suggestion();
    state.suggested = suggested && suggested->angle == angle;
    return state;
}

void PlanPart::show_places() {
    if (!round_.has_look()) return;
    for (const Angle angle : all_angles) plan_->show_place(angle, state_at(angle));
}

void PlanPart::want_pictures() {
    std::vector<PictureWish> wishes;
    for (const Angle angle : all_angles) {
        const auto lying = round_.lying_at(angle);
        if (!lying.empty()) wishes.push_back({lying.front(), picture_edge(angle)});
    }
    session_.pictures().want(this, wishes);
}

void PlanPart::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (round_.has_look()) want_pictures();
}

}  // namespace quarterturn
