#include "indexer/rules/coverage.h"

#include <algorithm>

namespace quarterturn {
namespace {

bool contains(const std::vector<SittingId>& sittings, SittingId wanted) {
    return std::find(sittings.begin(), sittings.end(), wanted) != sittings.end();
}

bool stands_for(const Photo& photo, const Shot& shot) {
    return photo.tags.stage == shot.stage && photo.tags.angle == shot.angle;
}

// Usable first, then sharpest; of equals the one that came in first.
bool better(const Photo& one, const Photo& other) {
    if (usable(one) != usable(other)) return usable(one);
    if (one.measures.focus != other.measures.focus) {
        return one.measures.focus > other.measures.focus;
    }
    return one.id < other.id;
}

const Photo* best_photo(const Look& look, const Shot& shot, std::span<const Photo> photos) {
    const Photo* best = nullptr;
    for (const Photo& photo : photos) {
        if (!counts_for(photo, look) || !stands_for(photo, shot)) continue;
        if (best == nullptr || better(photo, *best)) best = &photo;
    }
    return best;
}

const Waiver* find_waiver(std::span<const Waiver> waivers, const Shot& shot) {
    const auto found = std::find_if(waivers.begin(), waivers.end(),
                                    [&](const Waiver& waiver) { return waiver.shot == shot; });
    return found == waivers.end() ? nullptr : &*found;
}

CoverageLine judge_line(const ShotLine& wanted, const Photo* best, const Waiver* waiver) {
    CoverageLine line;
    line.wanted = wanted;
    if (best != nullptr) {
        line.photo = best->id;
        line.verdict = usable(*best) ? Coverage::covered : Coverage::weak;
        if (line.verdict == Coverage::weak) line.flaws = best->flaws;
    }
    if (line.verdict != Coverage::covered && waiver != nullptr) {
        line.verdict = Coverage::waived;
        line.waived_because = waiver->reason;
    }
    return line;
}

std::string_view place(Angle angle) {
    switch (angle) {
        case Angle::front:
            return "the front";
        case Angle::left:
            return "the left side";
        case Angle::right:
            return "the right side";
        case Angle::back:
            return "the back";
        case Angle::crown:
            return "the crown";
        case Angle::left_three_quarter:
            return "the left three-quarter";
        case Angle::right_three_quarter:
            return "the right three-quarter";
        case Angle::detail:
            return "a detail";
    }
    return {};
}

std::string photo_text(const Shot& shot) {
    return std::string(word(shot.stage)) + " photo of " + std::string(place(shot.angle));
}

std::string joined(const std::vector<Flaw>& flaws) {
    std::string text;
    for (std::size_t i = 0; i < flaws.size(); ++i) {
        if (i > 0) text += i + 1 == flaws.size() ? " and " : ", ";
        text += word(flaws[i]);
    }
    return text;
}

std::string name_of(const Look& look) {
    return look.name.empty() ? std::string(word(look.worn)) + " look" : look.name;
}

std::string complete_text(const std::vector<CoverageLine>& lines) {
    const bool waived = std::any_of(lines.begin(), lines.end(), [](const CoverageLine& line) {
        return line.wanted.need == Need::required && line.verdict == Coverage::waived;
    });
    return waived ? "every required shot is there or waived." : "every required shot is there.";
}

std::string next_shot_text(const std::vector<CoverageLine>& lines) {
    const auto first = std::find_if(lines.begin(), lines.end(), open_gap);
    if (first == lines.end()) return complete_text(lines);
    const auto more = std::count_if(first + 1, lines.end(), open_gap);
    const std::string text = gap_text(*first);
    if (more == 0) return text + ".";
    return text + ", and " + std::to_string(more) + " more to shoot.";
}

}  // namespace

bool usable(const Photo& photo) {
    return photo.flaws.empty() || !photo.tags.accepted_because.empty();
}

bool counts_for(const Photo& photo, const Look& look) {
    if (photo.tags.look) return *photo.tags.look == look.id;
    return photo.tags.stage == Stage::before && photo.tags.sitting &&
           contains(look.sittings, *photo.tags.sitting);
}

bool waits_for_its_place(const Photo& photo) {
    const Tags& tags = photo.tags;
    return !tags.angle || !tags.stage || (!tags.look && tags.stage != Stage::before);
}

std::vector<Photo> photos_of_shot(const Look& look, const Shot& shot,
                                  std::span<const Photo> photos) {
    std::vector<Photo> found;
    for (const Photo& photo : photos) {
        if (counts_for(photo, look) && stands_for(photo, shot)) found.push_back(photo);
    }
    std::sort(found.begin(), found.end(), better);
    return found;
}

bool open_gap(const CoverageLine& line) {
    return line.wanted.need == Need::required &&
           (line.verdict == Coverage::missing || line.verdict == Coverage::weak);
}

std::string gap_text(const CoverageLine& line) {
    if (!line.photo) return "no " + photo_text(line.wanted.shot);
    return "the best " + photo_text(line.wanted.shot) + " is " + joined(line.flaws);
}

CoverageReport judge_coverage(const Look& look, const ShotList& shot_list,
                              std::span<const Photo> photos, std::span<const Waiver> waivers) {
    CoverageReport report;
    for (const ShotLine& wanted : shot_list) {
        report.lines.push_back(judge_line(wanted, best_photo(look, wanted.shot, photos),
                                          find_waiver(waivers, wanted.shot)));
    }
    report.complete = std::none_of(report.lines.begin(), report.lines.end(), open_gap);
    report.next_shot = name_of(look) + ": " + next_shot_text(report.lines);
    return report;
}

}  // namespace quarterturn
