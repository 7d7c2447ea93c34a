#include "indexer/looks/consents.h"

#include <algorithm>
#include <limits>
#include <set>

#include "indexer/disk/checksum.h"
#include "indexer/disk/write_once.h"
#include "indexer/store/hair_only_table.h"
#include "indexer/store/some_records.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_paper_bytes = std::int64_t{64} << 20;

Path folder_of_papers(ClientId client) {
    return Path("consents") / ("client " + std::to_string(client.value));
}

// Written whole by an attempt that was interrupted before the records knew of it.
bool is_left(Library& library, const Path& place, std::string_view sum) {
    const auto papers = library.consents().papers();
    const bool recorded = std::ranges::any_of(
        papers, [&](const ConsentPaper& paper) { return paper.path == place.generic_string(); });
    return !recorded && sha256_of_file(library.disk(), library.folder() / place) == sum;
}

// "form.pdf", "form (2).pdf" …: free, or with what was left of the same paper.
Path place_of_paper(Library& library, const Path& folder, const Path& name, std::string_view sum) {
    Path place = folder / name;
    for (int number = 2;
         library.disk().exists(library.folder() / place) && !is_left(library, place, sum);
         ++number) {
        Path numbered = name.stem();
        numbered += " (" + std::to_string(number) + ")";
        numbered += name.extension();
        place = folder / numbered;
    }
    return place;
}

ClientId client_of(Library& library, std::span<const ConsentId> entries) {
    std::optional<ClientId> client;
    for (const ConsentId id : entries) {
        const auto entry = library.consents().find(id);
        if (!entry) {
            throw StoreError("There is no entry " + std::to_string(id.value) +
                             " in the consents: look its number up in the history.");
        }
        if (client && *client != entry->client) {
            throw StoreError("The entries belong to several clients: attach the file for each.");
        }
        client = entry->client;
    }
    if (!client) throw StoreError("No entry was named that the file belongs to.");
    return *client;
}

Bytes read_paper(Library& library, const Path& file) {
    Bytes bytes = library.disk().read(file, most_paper_bytes);
    if (bytes.empty()) {
        throw StoreError(file.string() + " is empty: choose the scan or the message itself.");
    }
    return bytes;
}

void refuse_own_guardian(Library& library, const ConsentEntry& entry) {
    if (entry.giver != ConsentGiver::guardian) return;
    const auto client = library.clients().find(entry.client);
    if (!client || folded(client->name) != folded(entry.guardian)) return;
    throw StoreError(
        "A child cannot be her own guardian: name the parent or guardian who allows it.");
}

// By her age as the entry itself tells it, or as it was told before.
void refuse_child_alone(Library& library, const ConsentEntry& entry) {
    if (entry.said != ConsentSaid::granted || entry.giver == ConsentGiver::guardian) return;
    auto entries = library.consents().of(entry.client);
    entries.push_back(entry);
    entries.back().id = ConsentId{std::numeric_limits<std::int64_t>::max()};  // said last
    if (!is_child_on(entries, entry.said_on)) return;
    const auto client = library.clients().find(entry.client);
    const auto age = age_on(entries, entry.said_on);
    throw StoreError((client ? client->name : "She") + " is " +
                     (age && is_child(*age) ? std::string(word(*age)) : "a child") +
                     ": a parent or guardian decides; say who (--guardian).");
}

void record_one(Library& library, const SaidOfUses& said, std::vector<ConsentEntry>& recorded) {
    refuse_own_guardian(library, said.entry);
    refuse_child_alone(library, said.entry);
    for (const Use use : said.uses) {
        ConsentEntry each = said.entry;
        each.use = use;
        each.id = library.consents().add(each);
        recorded.push_back(std::move(each));
    }
}

std::vector<ConsentId> ids_in(const std::vector<ConsentEntry>& entries) {
    std::vector<ConsentId> ids;
    for (const ConsentEntry& entry : entries) ids.push_back(entry.id);
    return ids;
}

// Within a transaction.
ConsentPaper add_paper(Library& library, const Path& file, std::span<const ConsentId> entries,
                       LocalTime now) {
    const ClientId client = client_of(library, entries);
    const Bytes bytes = read_paper(library, file);
    const Path folder = folder_of_papers(client);
    library.disk().make_folders(library.folder() / folder);
    ConsentPaper paper;
    paper.name = file.filename().string();
    paper.sha256 = sha256(bytes);
    const Path place = place_of_paper(library, folder, file.filename(), paper.sha256);
    const bool left = library.disk().exists(library.folder() / place);
    paper.path = place.generic_string();
    paper.bytes = static_cast<std::int64_t>(bytes.size());
    paper.added_at = now;
    paper.id = library.consents().add_paper(paper);
    library.consents().attach(paper.id, entries);
    if (!left) write_once(library.disk(), library.folder() / place, bytes);
    return paper;
}

std::string what_she_allows(Library& library, ClientId id) {
    const auto client = library.clients().find(id);
    return "what " + (client ? client->name : "she") + " allows";
}

}  // namespace

std::vector<ConsentEntry> record_said(Library& library, const std::vector<SaidOfUses>& all,
                                      const Path& paper) {
    Transaction together(library.database());
    std::vector<ConsentEntry> recorded;
    for (const SaidOfUses& said : all) record_one(library, said, recorded);
    if (recorded.empty()) return recorded;
    if (!paper.empty()) {
        const ConsentPaper attached =
            add_paper(library, paper, ids_in(recorded), all.back().entry.recorded_at);
        for (ConsentEntry& each : recorded) each.papers.push_back(attached);
    }
    library.history().stop_at("recorded " + what_she_allows(library, recorded.back().client));
    together.commit();
    return recorded;
}

std::vector<ConsentEntry> record_consent(Library& library, const ConsentEntry& entry,
                                         std::span<const Use> uses) {
    return record_said(library, {{entry, {uses.begin(), uses.end()}}}, {});
}

// A day that every entry was said before.
constexpr Date end_of_time{std::chrono::year{9999}, std::chrono::December, std::chrono::day{31}};

std::vector<Use> uses_to_withdraw(Library& library, ClientId client) {
    const auto entries = library.consents().of(client);
    std::vector<Use> uses;
    for (const Use use : all_uses) {
        const StandingConsent consent = consent_on(entries, use, end_of_time);
        if (consent.entry != nullptr && consent.entry->said == ConsentSaid::granted) {
            uses.push_back(use);
        }
    }
    return uses;
}

ConsentPaper attach_paper(Library& library, const Path& file, std::span<const ConsentId> entries,
                          LocalTime now) {
    Transaction both(library.database());
    ConsentPaper paper = add_paper(library, file, entries, now);
    library.history().stop_at("attached a paper to " +
                              what_she_allows(library, client_of(library, entries)));
    both.commit();
    return paper;
}

std::string problem_with_paper(Library& library, const ConsentPaper& paper) {
    const Path file = library.folder() / paper.path;
    const std::string next = ": put it back from a backup, or attach the paper again.";
    if (!library.disk().exists(file)) return file.string() + " is not there any longer" + next;
    if (holds(library.disk(), file, paper.bytes, paper.sha256)) return {};
    return file.string() + " is no longer the file that was attached" + next;
}

std::vector<std::string> problems_with_papers(Library& library,
                                              std::span<const ConsentId> entries) {
    std::vector<std::string> problems;
    for (const ConsentId id : entries) {
        const auto entry = library.consents().find(id);
        if (!entry) continue;
        for (const ConsentPaper& paper : entry->papers) {
            std::string problem = problem_with_paper(library, paper);
            const bool told = std::ranges::find(problems, problem) != problems.end();
            if (!problem.empty() && !told) problems.push_back(std::move(problem));
        }
    }
    return problems;
}

}  // namespace quarterturn
