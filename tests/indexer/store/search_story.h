#pragma once
// Changes of a library, and a plain model of what a search finds after them.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <ranges>
#include <set>

#include "indexer/store/first_found.h"
#include "tests/indexer/store/plain_words.h"
#include "tests/support/arbitrary_text.h"
#include "tests/support/example_library.h"

namespace quarterturn {

class SearchStory {
  public:
    SearchStory() {
        const ClientId noor = library().clients().add(client_called("Noor Comber"));
        clients_ = {example_.mira, noor};
        Sitting fitting = library().sittings().find(example_.trial).value();
        fitting.client = noor;
        fitting.kind = SittingKind::consultation;
        fitting.wedding.reset();
        sittings_ = {example_.trial, library().sittings().add(fitting)};
        Look leaf;
        leaf.client = noor;
        leaf.name = "leaf";
        looks_ = {example_.look, library().looks().add(leaf)};
        Device camera;
        camera.make = "Brackwell";
        devices_ = {example_.phone, library().devices().find_or_add(camera)};
    }

    void go_on() {
        switch (*rc::gen::inRange(0, 12)) {
            case 0:
            case 1:
            case 2:
                return bring_in();
            case 3:
            case 4:
            case 5:
                return tag();
            case 6:
                library().history().undo();
                return;
            case 7:
                library().history().redo();
                return;
            case 8:
                return rename();
            case 9:
                library().recipes().save(any(looks_), any_recipe(), at("2026-11-07T12:00"));
                return;
            case 10:
                return add_and_take_back();
            default:
                return example_.reopen();
        }
    }

    void compare(int times) {
        for (; times > 0; --times) {
            const PhotoSearch search = any_search();
            RC_LOG() << "words: " << search.words;
            const auto all = library().search().find(search);
            RC_ASSERT(ids(all) == expected(search));
            compare_first_page(search, all);
        }
    }

    // Its photos are the first of all, and as many as were asked for where others follow.
    void compare_first_page(const PhotoSearch& search, const std::vector<FoundPhoto>& all) {
        const int at_most = *rc::gen::inRange(1, 8);
        const FirstFound first = first_found(library().database(), search, at_most);
        RC_ASSERT(first.all == (first.photos.size() == all.size()));
        RC_ASSERT(first.all || first.photos.size() == static_cast<std::size_t>(at_most));
        RC_ASSERT(std::ranges::equal(first.photos, all | std::views::take(first.photos.size())));
    }

    // The index says what the records say, row by row.
    void compare_index() {
        auto& handle = library().database().handle();
        const auto difference = [&](const char* sql) { return handle.execAndGet(sql).getInt(); };
        RC_ASSERT(difference("SELECT count(*) FROM (SELECT record * 8 + kind, text FROM "
                             "record_words WHERE text IS NOT NULL EXCEPT "
                             "SELECT rowid, text FROM words)") == 0);
        RC_ASSERT(difference("SELECT count(*) FROM (SELECT rowid, text FROM words EXCEPT "
                             "SELECT record * 8 + kind, text FROM record_words)") == 0);
        handle.exec("INSERT INTO words (words) VALUES ('integrity-check')");
    }

    Library& library() { return example_.library; }

  private:
    void bring_in() {
        Photo photo = example_photo(any(search_vocabulary) + std::to_string(++count_) + ".jpg");
        if (*rc::gen::inRange(0, 4) > 0) {
            photo.file.taken = taken_at("2026-11-06T20:00:00");
            photo.file.taken->local += std::chrono::hours{*rc::gen::inRange(0, 72)};
        }
        photo.file.device = maybe(devices_);
        if (*rc::gen::arbitrary<bool>()) photo.flaws = {Flaw::too_dark};
        photo.tags = any_tags();
        library().photos().add(photo);
    }

    void tag() {
        const auto photos = library().photos().all();
        if (photos.empty()) return;
        const Photo photo = any(photos);
        library().history().apply({"tagged", {{photo.id, any_tags()}}, {}});
    }

    void rename() {
        Client client = library().clients().find(any(clients_)).value();
        client.name = "Ada " + any(search_vocabulary);
        client.note = any_words();
        library().clients().change(client);
        Look look = library().looks().find(any(looks_)).value();
        look.name = any(search_vocabulary) + " bun";
        library().looks().change(look);
        Sitting sitting = library().sittings().find(any(sittings_)).value();
        sitting.note = any_words();
        library().sittings().change(sitting);
        Wedding wedding = library().weddings().find(example_.wedding).value();
        wedding.venue = any_words();
        library().weddings().change(wedding);
    }

    void add_and_take_back() {
        library().history().record("added her",
                                   [&] { library().clients().add(client_called("Combina")); });
        library().history().undo();
        if (*rc::gen::arbitrary<bool>()) library().history().redo();
    }

    static Recipe any_recipe() {
        Recipe recipe;
        recipe.parting = any_words();
        recipe.build.push_back({any_words(), std::nullopt, {}});
        return recipe;
    }

    Tags any_tags() {
        Tags tags;
        tags.sitting = maybe(sittings_);
        tags.look = maybe(looks_);
        tags.stage = maybe(std::vector(all_stages.begin(), all_stages.end()));
        tags.angle = maybe(std::vector(all_angles.begin(), all_angles.end()));
        if (const auto shown = maybe(clients_)) tags.shown.push_back(*shown);
        tags.note = any_words();
        if (*rc::gen::inRange(0, 4) == 0) tags.accepted_because = any_words();
        return tags;
    }

    PhotoSearch any_search() {
        PhotoSearch search;
        if (*rc::gen::arbitrary<bool>()) search.words = any_words();
        const auto sometimes = [](auto value) {
            if (*rc::gen::inRange(0, 3) > 0) value.reset();
            return value;
        };
        search.client = sometimes(maybe(clients_));
        search.look = sometimes(maybe(looks_));
        search.sitting = sometimes(maybe(sittings_));
        search.stage = sometimes(maybe(std::vector(all_stages.begin(), all_stages.end())));
        search.angle = sometimes(maybe(std::vector(quarter_angles.begin(), quarter_angles.end())));
        search.device = sometimes(maybe(devices_));
        const std::vector days{*parse_date("2026-11-07"), *parse_date("2026-11-08")};
        search.from = sometimes(maybe(days));
        search.to = sometimes(maybe(days));
        search.unplaced = *rc::gen::inRange(0, 6) == 0;
        search.untagged = *rc::gen::inRange(0, 6) == 0;
        search.flawed = *rc::gen::inRange(0, 6) == 0;
        return search;
    }

    // Everything that is said of and round a photo.
    std::string texts(const Photo& photo) {
        std::string text =
            photo.file.name + '\n' + photo.tags.note + '\n' + photo.tags.accepted_because + '\n';
        const auto add_client = [&](ClientId id) {
            const Client client = library().clients().find(id).value();
            text += client.name + '\n' + client.note + '\n';
        };
        const auto add_wedding = [&](std::optional<WeddingId> id) {
            if (!id) return;
            const Wedding wedding = library().weddings().find(*id).value();
            text += wedding.name + '\n' + wedding.venue + '\n';
        };
        for (const ClientId shown : photo.tags.shown) add_client(shown);
        if (photo.tags.sitting) {
            const Sitting sitting = library().sittings().find(*photo.tags.sitting).value();
            text += std::string(word(sitting.kind)) + ' ' + iso_text(date_of(sitting.starts)) +
                    '\n' + sitting.note + '\n';
            add_client(sitting.client);
            add_wedding(sitting.wedding);
        }
        if (photo.tags.look) {
            const Look look = library().looks().find(*photo.tags.look).value();
            text += look.name + '\n';
            add_client(look.client);
            add_wedding(look.wedding);
            if (const auto revision = library().recipes().current(look.id)) {
                text += revision->recipe.parting + '\n';
                for (const Step& step : revision->recipe.build) text += step.words + '\n';
            }
        }
        return text;
    }

    bool concerns(const Photo& photo, ClientId client) {
        const Tags& tags = photo.tags;
        return (tags.sitting && library().sittings().find(*tags.sitting)->client == client) ||
               (tags.look && library().looks().find(*tags.look)->client == client) ||
               std::ranges::find(tags.shown, client) != tags.shown.end();
    }

    bool holds(const Photo& photo, const PhotoSearch& search) {
        const Tags& tags = photo.tags;
        const std::string day = photo.moment ? iso_text(date_of(*photo.moment)) : "";
        std::istringstream words(search.words);
        const std::string all = texts(photo);
        for (std::string wanted; words >> wanted;) {
            if (!has_word(all, wanted)) return false;
        }
        return (!search.client || concerns(photo, *search.client)) &&
               (!search.look || tags.look == search.look) &&
               (!search.sitting || tags.sitting == search.sitting) &&
               (!search.stage || tags.stage == search.stage) &&
               (!search.angle || tags.angle == search.angle) &&
               (!search.device || photo.file.device == search.device) &&
               (!search.from || (!day.empty() && day >= iso_text(*search.from))) &&
               (!search.to || (!day.empty() && day <= iso_text(*search.to))) &&
               (!search.unplaced || !tags.sitting) &&
               (!search.untagged || !tags.angle || !tags.stage) &&
               (!search.flawed || !photo.flaws.empty());
    }

    std::vector<PhotoId> expected(const PhotoSearch& search) {
        auto photos = library().photos().all();
        std::erase_if(photos, [&](const Photo& photo) { return !holds(photo, search); });
        std::ranges::sort(photos, [](const Photo& a, const Photo& b) {
            return std::pair(a.moment.value_or(LocalTime::min()), a.id) >
                   std::pair(b.moment.value_or(LocalTime::min()), b.id);
        });
        std::vector<PhotoId> result;
        for (const Photo& photo : photos) result.push_back(photo.id);
        return result;
    }

    static std::vector<PhotoId> ids(const std::vector<FoundPhoto>& found) {
        std::vector<PhotoId> result;
        for (const FoundPhoto& photo : found) result.push_back(photo.id);
        return result;
    }

    static std::string any_words() {
        std::string words;
        for (int left = *rc::gen::inRange(0, 3); left > 0; --left)
            words += any(search_vocabulary) + ' ';
        return words;
    }

    template <class Value>
    static Value any(const std::vector<Value>& values) {
        return values[*rc::gen::inRange<std::size_t>(0, values.size())];
    }
    template <class Value>
    static std::optional<Value> maybe(const std::vector<Value>& values) {
        if (*rc::gen::arbitrary<bool>()) return std::nullopt;
        return any(values);
    }

    ExampleLibrary example_;
    std::vector<ClientId> clients_;
    std::vector<SittingId> sittings_;
    std::vector<LookId> looks_;
    std::vector<DeviceId> devices_;
    int count_ = 0;
};

}  // namespace quarterturn
