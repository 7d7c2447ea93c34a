#pragma once
// Somewhere in the window that a sentence or a button can lead to.

#include <QObject>
#include <QString>
#include <filesystem>
#include <optional>
#include <vector>

#include "indexer/record/consent.h"
#include "indexer/record/id.h"
#include "indexer/record/shot_list.h"

namespace quarterturn {

Q_NAMESPACE

// The moments of her job, in the order of the row at the top.
enum class Moment {
    coming_up,
    bringing_in,
    round_the_head,
    recipe,
    sign_off,
    contact_sheet,
    kit_list,
    running_order,
    wedding_morning,
    trial_against_today,
    before_and_after,
    what_changed,
    client_record,
    consent,
    portfolio,
    all_photos,
    keeping_safe,
    settings
};
Q_ENUM_NS(Moment)  // the window remembers a moment by its word

// Where to, and what to have at hand there. What a screen has no use for it passes over.
struct Place {
    Moment moment = Moment::coming_up;
    std::optional<WeddingId> wedding{};
    std::optional<ClientId> client{};
    std::optional<SittingId> sitting{};
    std::optional<LookId> look{};
    std::optional<Shot> shot{};
    std::optional<PhotoId> photo{};
    std::optional<Use> use{};
    bool to_take_down = false;  // to the list of what went out and has to be taken down
    std::vector<std::filesystem::path> sources{};  // a card or folders that photos came from
    QString of_lock{};  // what became of locking or unlocking, to be said beside the lock
};

}  // namespace quarterturn
