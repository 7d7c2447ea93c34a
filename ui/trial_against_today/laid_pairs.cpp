#include "ui/trial_against_today/laid_pairs.h"

#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {

LaidPairs::LaidPairs(Session& session, QObject* parent) : QObject(parent), session_(session) {
    connect(&session_, &Session::opened, this, [this] { kept_.clear(); });
}

LaidPairs::Key LaidPairs::key_of(const Photo& first, const Photo& second) const {
    HeadPointsTable points = session_.library().head_points();
    return {first.id,
            second.id,
            points.of(first.id),
            points.of(second.id),
            first.tags.mirrored,
            second.tags.mirrored};
}

std::optional<LaidPair> LaidPairs::of(const Photo& first, const Photo& second) {
    const Key key = key_of(first, second);
    const auto kept = kept_.find({first.id.value, second.id.value});
    if (kept != kept_.end() && kept->second.key == key) return kept->second.pair;
    if (laying_) return std::nullopt;
    laying_ = session_.start<LaidPair>(
        [&decoder = session_.decoder(), first, second](Library& library, Job&) {
            HeadFinder finder;
            return lay_pair(library, decoder, finder, first, second);
        },
        [pairs = QPointer(this), key](LaidPair pair) {
            if (pairs) pairs->keep(key, std::move(pair));
        });
    connect(laying_, &Job::failed, this, [this, key](const QString& sentence) {
        LaidPair none;
        none.refused = to_utf8(sentence);
        keep(key, std::move(none));
    });
    connect(laying_, &Job::ended, this, [this] {
        laying_ = nullptr;
        emit laid();
    });
    return std::nullopt;
}

void LaidPairs::keep(const Key& key, LaidPair pair) {
    kept_[{key.first.value, key.second.value}] = {key, std::move(pair)};
}

}  // namespace quarterturn
