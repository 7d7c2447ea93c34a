#pragma once
// Going round the head without the widgets: which look and stage are shown, which photo is in hand,
// and what a key does to it. Everything goes through the session, so all of it undoes.

#include <map>
#include <optional>

#include "indexer/intake/tagging.h"
#include "indexer/looks/round_the_head.h"
#include "indexer/rules/suggestion.h"
#include "ui/shell/session.h"

namespace quarterturn {

class HeadRound {
  public:
    explicit HeadRound(Session& session) : session_(session) {}

    void arrive(const Place& place);
    void refresh();  // throws StoreError

    bool has_look() const { return round_.has_value(); }
    const RoundTheHead& round() const { return *round_; }
    LookId look() const { return round_->state.look.id; }
    // The stage that the plan shows, and that the photo in hand will get.
    Stage stage() const { return stage_; }
    const Photo* in_hand() const;
    bool waits(PhotoId photo) const;
    std::vector<PhotoId> frames_in_hand() const;  // with the others of its burst
    std::vector<Photo> lying_at(Angle angle) const;
    // The photo in hand, then those worth holding beside it: its burst, what lies at the same shot,
    // and the others that wait.
    std::vector<Photo> to_compare() const;
    std::optional<AngleSuggestion> suggestion() const;  // for the photo in hand while it waits

    void take_in_hand(PhotoId photo);
    void step(int by);  // through those that wait
    void show_look(LookId look);
    void show_stage(Stage stage);

    // Of the photo in hand; each does nothing when there is none.
    void place(Angle angle);  // and the next one comes
    void take_suggestion();
    void say_stage(Stage stage);  // a waiting photo gets it with its place, a lying one at once
    void other_look();
    void turn_round();  // mirrored or not
    void use_anyway(const QString& reason);
    void put_into_bin();  // it alone, not its burst
    void take_off();      // its place; it waits again

    void put(const std::vector<PhotoId>& photos, Angle angle);  // dropped there

  private:
    void choose_look(const Place& place);
    void choose_photo();
    std::size_t waiting_index(PhotoId photo) const;  // the size when it does not wait
    Stage stage_for(const Photo& photo) const;
    void tag_in_hand(const TagWishes& wishes);

    Session& session_;
    std::optional<RoundTheHead> round_;
    std::optional<LookId> look_;
    Stage stage_ = Stage::before;
    std::optional<PhotoId> in_hand_;
    std::optional<Photo> last_in_hand_;  // as it was when last looked at
    std::vector<PhotoId> placed_;        // an undo brings the last one back into the hand
    // What she said last where this stage was suggested: the photos after it will be the same.
    std::map<Stage, Stage> said_instead_;
    bool stage_chosen_ = false;  // for the photo in hand
};

}  // namespace quarterturn
