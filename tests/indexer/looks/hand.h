#pragma once
// One thing after another that she may do to her records, at random.

#include <rapidcheck.h>

#include "indexer/looks/pairs.h"
#include "indexer/store/done_table.h"
#include "tests/indexer/looks/whole_look.h"

namespace quarterturn {

inline int number(int below) {
    return *rc::gen::inRange(0, below);
}

inline bool maybe() {
    return number(2) == 0;
}

template <class Value>
Value any_of(const std::vector<Value>& values) {
    return values[static_cast<std::size_t>(number(static_cast<int>(values.size())))];
}

template <class Value>
std::vector<Value> shuffled(std::vector<Value> values) {
    for (std::size_t i = values.size(); i > 1; --i) {
        std::swap(values[i - 1], values[static_cast<std::size_t>(number(static_cast<int>(i)))]);
    }
    values.resize(static_cast<std::size_t>(number(static_cast<int>(values.size()) + 1)));
    return values;
}

inline std::string any_name() {
    return any_of(std::vector<std::string>{"Ada", "Bo", "Cleo", "Dagny", "Esme"});
}

inline Recipe any_recipe() {
    Recipe recipe = whole_recipe();
    recipe.finish = any_name();
    recipe.parting = any_name();
    return recipe;
}

class Hand {
  public:
    explicit Hand(Library& library) : library_(library) {}

    void act() {
        using Act = void (Hand::*)();
        const std::vector<Act> acts{
            &Hand::client,  &Hand::wedding,   &Hand::sitting, &Hand::look,     &Hand::shots,
            &Hand::waiver,  &Hand::recipe,    &Hand::draft,   &Hand::no_draft, &Hand::form,
            &Hand::packing, &Hand::morning,   &Hand::board,   &Hand::timer,    &Hand::done,
            &Hand::points,  &Hand::fact,      &Hand::filter,  &Hand::picture,  &Hand::whose,
            &Hand::seen,    &Hand::selection, &Hand::setting, &Hand::pair,     &Hand::frame};
        (this->*any_of(acts))();
    }

    void tag() {
        const Photo photo = any_of(library_.photos().all());
        Tags tags = photo.tags;
        tags.note = any_name();
        tags.stage = any_of(std::vector(all_stages.begin(), all_stages.end()));
        tags.mirrored = maybe();
        library_.history().apply({"tagged", {{photo.id, tags}}, {}});
    }

  private:
    Look any_look() { return any_of(library_.looks().all()); }
    Wedding any_wedding() { return any_of(library_.weddings().all()); }
    Client any_client() { return any_of(library_.clients().all()); }
    PhotoId any_photo() { return any_of(library_.photos().all()).id; }
    std::vector<PhotoId> any_photos() {
        std::vector<PhotoId> photos;
        for (const Photo& photo : library_.photos().all()) photos.push_back(photo.id);
        return shuffled(photos);
    }

    template <class Table, class Row>
    static void save(Table table, Row row, bool anew) {
        if (anew) {
            table.add(row);
        } else {
            table.change(row);
        }
    }

    void client() {
        Client client = any_client();
        client.name = any_name();
        client.note = any_name();
        save(library_.clients(), client, maybe());
    }

    void wedding() {
        Wedding wedding = any_wedding();
        wedding.venue = any_name();
        wedding.party.clear();
        for (const Client& client : shuffled(library_.clients().all())) {
            wedding.party.push_back({client.id, any_name()});
        }
        if (maybe())
            wedding.party.insert(wedding.party.begin(),
                                 {library_.clients().add({{}, "New", ""}), ""});
        save(library_.weddings(), wedding, maybe());
    }

    void sitting() {
        Sitting sitting = any_of(library_.sittings().all());
        sitting.client = any_client().id;
        sitting.wedding = maybe() ? std::optional(any_wedding().id) : std::nullopt;
        sitting.note = any_name();
        save(library_.sittings(), sitting, maybe());
        look();
    }

    void look() {
        Look look = any_look();
        look.name = any_name();
        if (maybe()) look.client = library_.clients().add({{}, any_name(), ""});
        look.sittings.clear();
        for (const Sitting& sitting : shuffled(library_.sittings().all())) {
            look.sittings.push_back(sitting.id);
        }
        save(library_.looks(), look, maybe());
    }

    void shots() {
        ShotList list = shuffled(default_shot_list());
        maybe() ? library_.looks().set_shot_list(any_look().id, list)
                : library_.looks().set_own_default_shot_list(list);
    }

    void waiver() {
        const LookId look = any_look().id;
        const Shot shot = any_of(default_shot_list()).shot;
        maybe() ? library_.looks().waive(look, {shot, any_name()})
                : library_.looks().take_back_waiver(look, shot);
    }

    void recipe() { library_.recipes().save(any_look().id, any_recipe(), at("2026-11-07T12:30")); }
    void draft() {
        library_.recipes().keep_draft(any_look().id, any_recipe(), at("2026-11-07T12:40"));
    }
    void no_draft() { library_.recipes().drop_draft(any_look().id); }

    void form() {
        const std::string name = any_name();
        maybe() ? library_.recipe_templates().save(name, any_recipe())
                : library_.recipe_templates().remove(name);
    }

    void packing() {
        maybe() ? library_.kit_ticks().set(any_wedding().id, any_name(), number(9))
                : library_.kit_ticks().clear(any_wedding().id, any_name());
    }

    void morning() {
        Morning morning;
        morning.stylists.resize(static_cast<std::size_t>(1 + number(3)));
        for (StylistHours& hours : morning.stylists) {
            hours.arrives = 300 + number(60);
            hours.breaks.resize(static_cast<std::size_t>(number(3)));
        }
        for (const Client& client : shuffled(library_.clients().all())) {
            MorningWish wish;
            wish.client = client.id;
            wish.ready_by = number(600);
            morning.wishes.push_back(wish);
            morning.kept.push_back({client.id, SeatPart::set, 0, number(600)});
        }
        library_.mornings().save(any_wedding().id, morning);
    }

    void board() {
        const int step = number(3);
        maybe() ? library_.boards().tick(any_wedding().id, any_look().id, {step, any_name()})
                : library_.boards().untick(any_wedding().id, any_look().id, step);
    }

    void timer() {
        const auto timers = library_.boards().timers(any_wedding().id);
        if (!timers.empty() && maybe()) return library_.boards().stop(any_of(timers).id);
        library_.boards().start({{}, any_wedding().id, any_name(), 10 + number(9), 30});
    }

    void done() {
        DoneTable table(library_.database());
        maybe() ? table.set(any_wedding().id, any_client().id)
                : table.clear(any_wedding().id, any_client().id);
    }

    void points() {
        const double share = number(10) / 30.0;
        maybe() ? library_.head_points().set(any_photo(), {{share, 0.1}, {0.5, 0.9 - share}})
                : library_.head_points().clear(any_photo());
    }

    void fact() {
        const Fact fact = any_of(std::vector(facts_of_look.begin(), facts_of_look.end()));
        const std::vector<std::string> values = shuffled(std::vector<std::string>{"a", "b", "c"});
        library_.look_facts().say(any_look().id, fact, values);
    }

    void filter() {
        const std::string name = any_name();
        if (maybe()) return library_.pair_filters().remove(name);
        library_.pair_filters().keep(
            {name,
             {{{Fact::colour, shuffled(std::vector<std::string>{"a", "b", "c"})}}, "", maybe()}});
    }

    void picture() {
        Inspiration picture;
        picture.client = any_client().id;
        picture.name = any_name();
        picture.path = "inspiration/" + std::to_string(++pictures_) + ".jpg";
        picture.sha256 = sha256(picture.path.string());
        library_.inspirations().add(picture);
    }

    void whose() {
        const auto photos = any_photos();
        if (maybe()) return library_.credits().forget(photos);
        Credit credit{Whose::photographer, any_name(), {}, {}, {}};
        credit.licensed = shuffled(std::vector(all_uses.begin(), all_uses.end()));
        library_.credits().set(photos, credit);
    }

    void seen() { library_.credits().set_seen(any_photo(), {maybe(), maybe(), false}); }

    void selection() {
        const std::string name = any_name();
        if (number(3) == 0) {
            library_.selections().remove(name);
            library_.selections().keep({any_name(), any_photos()});
        } else if (maybe()) {
            library_.selections().keep({name, any_photos()});
        } else {
            library_.selections().remove(name);
        }
    }

    void setting() {
        library_.settings().set(any_of(std::vector<std::string>{"spare", "look families"}),
                                any_name());
    }

    std::vector<Pair> pairs() {
        bring_pairs_up_to_date(library_);
        return library_.pairs().all();
    }

    void pair() {
        const auto all = pairs();
        if (all.empty()) return;
        maybe() ? pin(library_, any_of(all).id, maybe())
                : refuse(library_, any_of(all).id, maybe());
    }

    void frame() {
        const auto all = pairs();
        if (!all.empty()) choose_frames(library_, any_of(all).id, any_photo(), std::nullopt);
    }

    Library& library_;
    inline static int pictures_ = 0;
};

}  // namespace quarterturn
