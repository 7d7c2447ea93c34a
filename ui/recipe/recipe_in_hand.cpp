#include "ui/recipe/recipe_in_hand.h"

#include "indexer/looks/write_recipe.h"
#include "ui/recipe/recipe_edits.h"
#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::chrono::seconds until_kept{1};

}  // namespace

RecipeInHand::RecipeInHand(Session& session)
    : session_(session), library_(session.library().folder()) {
    timer_.setSingleShot(true);
    timer_.setInterval(until_kept);
    connect(&timer_, &QTimer::timeout, this, &RecipeInHand::keep);
}

RecipeInHand::~RecipeInHand() {
    disconnect();
    keep();
}

bool RecipeInHand::is_of_open_library() const {
    return session_.is_open() && session_.library().folder() == library_;
}

void RecipeInHand::take_up(std::optional<Look> look) {
    keep();
    if (unkept_ && session_.library().looks().find(look_->id)) return;
    unkept_ = false;
    look_ = std::move(look);
    read();
}

void RecipeInHand::read() {
    saved_.reset();
    kept_at_.reset();
    recipe_ = {};
    if (!look_) return;
    RecipeTable recipes = session_.library().recipes();
    saved_ = recipes.current(look_->id);
    if (saved_) recipe_ = saved_->recipe;
    if (const auto draft = recipes.draft(look_->id)) {
        kept_at_ = draft->kept_at;
        recipe_ = draft->recipe;
    }
}

void RecipeInHand::write(const Recipe& recipe) {
    if (!look_ || recipe == recipe_) return;
    recipe_ = recipe;
    unkept_ = true;
    timer_.start();
    emit changed();
}

void RecipeInHand::take_out(const QString& said, const Recipe& without) {
    if (!look_) return;
    keep();
    session_.change_records(writing_anew(look_->id, to_utf8(said), without, session_.now()));
}

void RecipeInHand::keep() {
    if (!unkept_ || !look_ || !is_of_open_library()) return;
    const bool kept = session_.attempt([this] {
        RecipeTable recipes = session_.library().recipes();
        recipes.keep_draft(look_->id, recipe_, session_.now());
        const auto draft = recipes.draft(look_->id);
        kept_at_ = draft ? std::optional(draft->kept_at) : std::nullopt;
    });
    unkept_ = !kept;
    if (kept) {
        timer_.stop();
    } else {
        timer_.start();  // tries again
    }
    emit changed();
}

void RecipeInHand::save() {
    if (!look_) return;
    keep();
    if (saved_ && saved_->recipe == recipe_) return session_.say(tr("All of it is saved already."));
    if (session_.change_records(saving_recipe(*look_, recipe_, session_.now()))) {
        session_.say(tr("Saved as a revision."));
    }
}

void RecipeInHand::go_back_to_saved() {
    if (!look_) return;
    keep();
    if (session_.change_records(going_back_to_saved(look_->id))) {
        session_.say(tr("What was saved is here again. Undo brings back what was written since."));
    }
}

void RecipeInHand::start_from(const QString& said, const Recipe& recipe) {
    if (!look_) return;
    keep();
    session_.change_records(writing_anew(look_->id, to_utf8(said), recipe, session_.now()));
}

}  // namespace quarterturn
