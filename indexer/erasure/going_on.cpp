#include "indexer/erasure/going_on.h"

#include <algorithm>
#include <iterator>

#include "indexer/erasure/files_saying.h"
#include "indexer/erasure/left_locked.h"
#include "indexer/erasure/listed_files.h"
#include "indexer/erasure/named_by_others.h"
#include "indexer/erasure/past_the_lock.h"
#include "indexer/erasure/placed_by_hand.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/listed_past_lock.h"
#include "indexer/store/own_texts.h"

namespace quarterturn {
namespace {

constexpr const char* not_sought =
    "What it was is not known any more, so nothing else could be looked for: qturn verify names "
    "the "
    "files that are in no record; look whose they are.";

SoughtNames names_in(const ErasureSought& sought) {
    std::vector<std::string> names;
    if (!sought.name.empty()) names.push_back(sought.name);
    return SoughtNames(names, sought.hers_alone);
}

void append(const std::vector<std::string>& more, std::vector<std::string>& to) {
    to.insert(to.end(), more.begin(), more.end());
}

void say(const std::vector<std::string>& words, std::vector<SaidOfFile>& said) {
    for (const std::string& one : words) said.push_back({{}, one});
}

// What is known of a file is said in place of that it may be hers.
void say_instead(std::vector<SaidOfFile> more, std::vector<SaidOfFile>& said) {
    for (SaidOfFile& one : more) {
        std::erase_if(said, [&](const SaidOfFile& before) { return before.file == one.file; });
        said.push_back(std::move(one));
    }
}

void say_left_locked(Library& library, std::vector<SaidOfFile>& said) try {
    say_instead(LeftLocked(library).said(), said);
} catch (const DiskError& error) {
    said.push_back({{}, error.what()});
}

// Looks for what is left of one of which the files are gone.
class Search {
  public:
    explicit Search(Library& library) : library_(library) {}

    Erased look_for(const UnfinishedErasure& one) {
        Erased erased{one.erasure, {}, {}};
        std::vector<SaidOfFile> said;
        if (!one.sought) {
            say({not_sought}, said);
        } else {
            if (!one.sought->name.empty()) look_in_records(*one.sought, erased, said);
            std::ranges::move(said_of_files(library_, *one.sought, {}), std::back_inserter(said));
        }
        erased.left = words_of(said);
        keep(one.erasure.id, std::move(said), erased.alike);
        return erased;
    }

    const std::vector<FoundLeft>& found() const { return found_; }

  private:
    void look_in_records(const ErasureSought& sought, Erased& erased,
                         std::vector<SaidOfFile>& said) {
        say(words_of_places_left(places_naming(library_.database(), names_in(sought))), said);
        erased.alike = named_with_a_part(library_, sought.weddings, sought.name);
    }

    void keep(ErasureId erasure, std::vector<SaidOfFile> said,
              const std::vector<std::string>& alike) {
        say(alike, said);
        for (SaidOfFile& one : said) {
            if (one.file.is_absolute()) one.file = one.file.lexically_relative(library_.folder());
            found_.push_back({erasure, std::move(one)});
        }
    }

    Library& library_;
    std::vector<FoundLeft> found_;
};

void finish_records(Library& library, const Search& search, GoneOn& gone) try {
    ErasureTable(library.database()).finish(search.found());
    for (Erased& erased : gone.erasures) erased.erasure.finished = true;
} catch (const StoreError& error) {
    gone.undone.emplace_back(error.what());
}

// What lies past a lock gets another name when it is locked or unlocked: she says when it is
// settled.
bool is_there(Library& library, const Path& file) try {
    return place_past_lock(file.native()) || listed_lies_there(library, file.native());
} catch (const DiskError&) {
    return true;
}

void add_finished(Library& library, const Erased& erased, std::vector<std::string>& words) {
    words.push_back("The erasure of " + iso_text(erased.erasure.on) +
                    " had not been finished, and is finished now.");
    append(erased.left, words);
    append(erased.alike, words);
    for (const Backup& backup : library.backups().before_erasure(erased.erasure.id)) {
        words.push_back("The backup in " + place_words(backup) +
                        " may hold what is erased: the next backup to it removes it there." +
                        unless_locked_since(library, backup));
    }
    words.emplace_back(erasure_caution);
}

std::vector<std::string> words_not_told(Library& library) {
    std::vector<std::string> words;
    for (const ErasureLeft& left : left_by_erasures(library)) {
        if (left.told) continue;
        if (words.empty()) {
            words.push_back("The erasure of " + iso_text(left.erased_on) +
                            " left something to look at:");
        }
        words.push_back(left.said.words);
    }
    return words;
}

}  // namespace

std::vector<std::string> words_of(const std::vector<SaidOfFile>& said) {
    std::vector<std::string> words;
    for (const SaidOfFile& one : said) words.push_back(one.words);
    return words;
}

std::vector<SaidOfFile> said_of_files(Library& library, const ErasureSought& sought,
                                      const std::set<std::string>& going) {
    std::vector<SaidOfFile> said = sought.unsure;
    PlacedByHand by_hand =
        placed_by_hand(library, {sought.checksums.begin(), sought.checksums.end()});
    std::erase_if(said, [&](const SaidOfFile& one) {
        return by_hand.of_others(one.file.lexically_relative(library.folder()).generic_string());
    });
    say_instead(files_saying(library, names_in(sought), sought.checksums, going, by_hand), said);
    std::ranges::move(by_hand.said, std::back_inserter(said));
    say_left_locked(library, said);
    std::ranges::move(files_past_the_lock(library, sought.checksums, going),
                      std::back_inserter(said));
    return said;
}

std::string not_finished(const Erasure& erasure) {
    return "What was erased on " + iso_text(erasure.on) +
           " is gone from the records, but the erasure is not finished. " + goes_on_by_itself +
           " What else to look for is said when it is finished.";
}

GoneOn go_on(Library& library) {
    GoneOn gone{{}, remove_listed(library)};
    Search search(library);
    for (const UnfinishedErasure& one : ErasureTable(library.database()).unfinished()) {
        gone.erasures.push_back(gone.undone.empty() ? search.look_for(one)
                                                    : Erased{one.erasure, {}, {}});
    }
    if (gone.undone.empty()) finish_records(library, search, gone);
    return gone;
}

std::vector<std::string> words_of(Library& library, const GoneOn& gone) {
    std::vector<std::string> words = gone.undone;
    for (const Erased& erased : gone.erasures) {
        if (erased.erasure.finished) {
            add_finished(library, erased, words);
        } else {
            append(erased.left, words);
            words.push_back(not_finished(erased.erasure));
        }
    }
    if (gone.erasures.empty() && !words.empty()) words.emplace_back(goes_on_by_itself);
    return words;
}

std::vector<std::string> finish_erasures(Library& library) {
    std::vector<std::string> words = words_not_told(library);
    if (!ErasureTable(library.database()).any_unfinished()) return words;
    const MoveLock lock(library);
    refuse_unless_alone(lock);
    append(words_of(library, go_on(library)), words);
    return words;
}

std::vector<ErasureLeft> left_by_erasures(Library& library) {
    ErasureTable erasures(library.database());
    std::vector<ErasureLeft> left = erasures.left();
    std::erase_if(left, [&](const ErasureLeft& one) {
        if (one.said.file.empty() || is_there(library, one.said.file)) return false;
        if (!library.only_to_look()) erasures.forget_left(one.id);
        return true;
    });
    return left;
}

void forget_left_by_erasures(Library& library) {
    ErasureTable(library.database()).forget_all_left();
}

void note_told_of_erasures(Library& library) {
    ErasureTable(library.database()).note_told();
}

}  // namespace quarterturn
