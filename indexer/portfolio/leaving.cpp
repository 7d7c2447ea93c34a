#include "indexer/portfolio/leaving.h"

#include <algorithm>

#include "indexer/disk/checksum.h"
#include "indexer/disk/write_once.h"
#include "indexer/store/library_settings.h"
#include "indexer/store/text_words.h"

namespace quarterturn {
namespace {

// Nothing when the age of somebody who may be the youngest was not told.
std::optional<AgeBand> youngest_of(const PhotoToShow& shown, Date on) {
    std::optional<AgeBand> youngest;
    bool told = true;
    for (const ShownPerson& person : shown.people) {
        const auto age = age_on(person.consents, on);
        told = told && age;
        if (age && (!youngest || *age < *youngest)) youngest = age;
    }
    return told || (youngest && is_child(*youngest)) ? youngest : std::nullopt;
}

std::optional<AgeBand> younger(std::optional<AgeBand> one, std::optional<AgeBand> other) {
    if (one && other) return std::min(*one, *other);
    const auto known = one ? one : other;
    return known && is_child(*known) ? known : std::nullopt;
}

std::string who_took(const Credit& credit, const std::string& business) {
    const std::string& name = credit.whose == Whose::own ? business : credit.name;
    if (!name.empty()) return name;
    throw StoreError(
        "Exports name who took a photo, and your own name is not set: set the business name "
        "first.");
}

std::string both_of(const std::string& one, const std::string& other) {
    if (one.empty() || one == other) return other;
    return other.empty() ? one : one + "; " + other;
}

std::vector<Exported> entered(Library& library, std::vector<Exported> entries,
                              const std::function<Path(ExportId)>& file) {
    Transaction all_or_none(library.database());
    const std::string name = file(library.ledger().next_id()).string();
    for (Exported& each : entries) {
        each.file = name;
        each.id = library.ledger().add(each);
    }
    if (!entries.empty()) {
        library.history().stop_at("sent pictures out (" + std::string(word(entries.front().use)) +
                                  ")");
    }
    all_or_none.commit();
    return entries;
}

}  // namespace

void refuse_inside_library(Library& library, const Path& folder) {
    using std::filesystem::weakly_canonical;
    const Path inside = weakly_canonical(library.folder());
    const Path wanted = weakly_canonical(std::filesystem::absolute(folder));
    if (std::ranges::mismatch(inside, wanted).in1 != inside.end()) return;
    throw StoreError(wanted.string() +
                     " lies in the library: choose a folder outside it, so that copies and "
                     "originals never mix.");
}

void refuse_names(Library& library, std::span<const Photo> photos, std::string_view what,
                  const std::string& words) {
    if (words.empty()) return;
    PhotoGate gate(library);
    for (const Photo& photo : photos) {
        for (const ShownPerson& person : gate.to_show(photo).people) {
            if (!share_a_word(words, person.name)) continue;
            throw StoreError("The " + std::string(what) + " would be \"" + words +
                             "\", and names " + person.name +
                             ", who is shown: write one that names nobody.");
        }
    }
}

ExportMetadata told_of(Library& library, const Photo& photo, const PhotoToShow& shown, Date on) {
    const Credit& credit = shown.credit.value();
    const std::string business = library.settings().get(business_name_setting).value_or("");
    const std::string creator = who_took(credit, business);
    ExportMetadata metadata;
    metadata.creators = {creator};
    metadata.copyright = "© " + creator;
    if (photo.moment) {
        metadata.copyright = "© " + iso_text(date_of(*photo.moment)).substr(0, 4) + " " + creator;
    }
    metadata.credit_line = credit.line.value_or(credit.whose == Whose::own ? business : "");
    metadata.shows_people = !shown.nobody;
    metadata.youngest = youngest_of(shown, on);
    return metadata;
}

ExportMetadata told_of_both(const ExportMetadata& one, const ExportMetadata& other) {
    ExportMetadata both = one;
    for (const std::string& creator : other.creators) {
        if (std::ranges::find(both.creators, creator) == both.creators.end()) {
            both.creators.push_back(creator);
        }
    }
    both.copyright = both_of(one.copyright, other.copyright);
    both.credit_line = both_of(one.credit_line, other.credit_line);
    both.shows_people = one.shows_people || other.shows_people;
    both.youngest = younger(one.youngest, other.youngest);
    return both;
}

std::string usual_caption(Library& library, const Tags& tags) {
    std::string caption;
    const auto add = [&](std::string_view part) {
        if (!caption.empty()) caption += ", ";
        caption += part;
    };
    if (tags.look) {
        for (const LookFact& fact : library.look_facts().of(*tags.look)) {
            if (fact.fact == Fact::family) add(fact.value);
        }
    }
    if (tags.angle) add(word(*tags.angle));
    return caption;
}

Exported entry_of(const Photo& photo, Use use, const Verdict& verdict, LocalTime now) {
    Exported entry;
    entry.photo = photo.id;
    entry.photo_name = photo.file.name;
    entry.photo_sha256 = photo.file.sha256;
    entry.use = use;
    entry.at = now;
    entry.under = verdict.under;
    return entry;
}

std::vector<Exported> write_into_ledger(Library& library, std::vector<Exported> entries,
                                        const std::function<Path(ExportId)>& file,
                                        std::span<const std::byte> bytes, IfThere there) {
    const std::string checksum = sha256(bytes);
    for (Exported& each : entries) {
        each.sha256 = checksum;
        each.bytes = static_cast<std::int64_t>(bytes.size());
    }
    entries = entered(library, std::move(entries), file);
    try {
        const Path written = entries.front().file;
        if (there == IfThere::replace) {
            replace_file(library.disk(), written, bytes);
        } else {
            write_once(library.disk(), written, bytes);
        }
    } catch (const DiskError&) {
        for (const Exported& each : entries) {
            library.ledger().take_down(each.id, {date_of(each.at), "It was never written."});
        }
        throw;
    }
    return entries;
}

}  // namespace quarterturn
