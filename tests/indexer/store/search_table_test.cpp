#include "indexer/store/search_table.h"

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

using Names = std::vector<std::string>;

class SearchTableTest : public testing::Test {
  protected:
    PhotoId add(const std::string& name, const Tags& tags = {}, const char* taken = nullptr) {
        const auto moment = taken ? std::optional(taken_at(taken)) : std::nullopt;
        Photo photo = example_photo(name, moment);
        photo.tags = tags;
        return library().photos().add(photo);
    }

    // By the photo's number, in the order they are found in.
    std::vector<PhotoId> found(const PhotoSearch& search) {
        std::vector<PhotoId> ids;
        for (const FoundPhoto& photo : library().search().find(search)) ids.push_back(photo.id);
        return ids;
    }

    Library& library() { return example.library; }

    ExampleLibrary example;
};

Tags noted(const std::string& note) {
    Tags tags;
    tags.note = note;
    return tags;
}

TEST_F(SearchTableTest, TheNewestComeFirstAndThoseWithoutATimeLast) {
    const PhotoId old = add("a.jpg", {}, "2025-11-07T10:00:00");
    const PhotoId timeless = add("b.jpg");
    const PhotoId fresh = add("c.jpg", {}, "2026-11-07T10:00:00");
    const PhotoId as_fresh = add("d.jpg", {}, "2026-11-07T10:00:00");
    EXPECT_EQ(found({}), (std::vector{as_fresh, fresh, old, timeless}));
}

TEST_F(SearchTableTest, DaysBelongToTheTimeBetweenThem) {
    const PhotoId first = add("a.jpg", {}, "2026-11-07T00:00:00");
    const PhotoId last = add("b.jpg", {}, "2026-11-08T23:59:59.9");
    add("too late.jpg", {}, "2026-11-09T00:00:00");
    add("too early.jpg", {}, "2026-11-06T23:59:59.9");
    add("no time.jpg");
    EXPECT_EQ(found({.from = parse_date("2026-11-07"), .to = parse_date("2026-11-08")}),
              (std::vector{last, first}));
}

TEST_F(SearchTableTest, CountsByTheClockAsItWasSetRight) {
    Photo photo = example_photo("a.jpg", taken_at("2026-11-07T23:50:00"));
    photo.file.device = example.phone;
    const PhotoId id = library().photos().add(photo);
    const PhotoSearch next_day{.from = parse_date("2026-11-08")};
    EXPECT_TRUE(found(next_day).empty());
    library().history().apply({"shifted", {}, {{example.phone, std::chrono::minutes(47)}}});
    EXPECT_EQ(found(next_day), std::vector{id});
    library().history().undo();
    EXPECT_TRUE(found(next_day).empty());
}

TEST_F(SearchTableTest, AWordIsFoundByItsBeginningWithoutCaseAndAccents) {
    const PhotoId note = add("a.jpg", noted("Der Kamm sitzt tief, über dem Nackén"));
    for (const char* words :
         {"kamm", "KAM", "uber", "nacken", "tief kamm", "nackén", "über  \t der"}) {
        EXPECT_EQ(found({.words = words}), std::vector{note}) << words;
    }
    for (const char* words : {"amm", "kamm hoch", "tiefer"}) {
        EXPECT_TRUE(found({.words = words}).empty()) << words;
    }
}

// Greek capitals carry no accents; that ß is ss stands in Unicode's CaseFolding.txt, and that œ is
// oe and ø is o in CLDR's Latin-ASCII.
TEST_F(SearchTableTest, CaseAndAccentsDoNotMatterInAnyScript) {
    const std::vector<std::pair<const char*, std::vector<const char*>>> spellings{
        {"Ανθή Λευκοπέτρου", {"ΑΝΘΗ", "ανθη", "Ανθή", "ΛΕΥΚΟΠΕΤΡΟΥ", "λευκοπετρου", "Λ"}},
        {"κόσμος", {"ΚΟΣΜΟΣ", "κοσμοσ", "κοσμος"}},
        {"Straße", {"strasse", "STRASSE", "straße"}},
        {"Søster Œuvre", {"soster", "SØSTER", "oeuvre", "œuvre"}},
        {"Ёлка", {"елка", "ЁЛКА"}},
        {"Nguyễn Đặng", {"nguyen", "dang", "NGUYỄN"}},
    };
    for (const auto& [note, searches] : spellings) {
        const PhotoId photo = add(std::string("photo of ") + note + ".jpg");
        for (const char* words : searches) {
            EXPECT_EQ(found({.words = words}), std::vector{photo}) << words;
        }
    }
    EXPECT_TRUE(found({.words = "ανθος"}).empty());
}

TEST_F(SearchTableTest, MarksAWordAsItIsWrittenHoweverItIsLookedFor) {
    const std::vector photo{add("a.jpg", noted("Die Straße zur Ανθή hinauf"))};
    EXPECT_EQ(library().search().found_texts(photo, "ΑΝΘΗ strasse").at(0),
              (std::vector<FoundText>{{WordsOf::photo,
                                       {{"Die ", false},
                                        {"Straße", true},
                                        {" zur ", false},
                                        {"Ανθή", true},
                                        {" hinauf", false}}}}));
}

TEST_F(SearchTableTest, AnAccentWrittenAsASignOfItsOwnIsTheSameAccent) {
    const PhotoId composed = add("a.jpg", noted("Zo\u00eb"));
    const PhotoId apart = add("b.jpg", noted("Zoe\u0308"));
    for (const char* words : {"zoe", "Zo\u00eb", "Zoe\u0308"}) {
        EXPECT_EQ(found({.words = words}), (std::vector{apart, composed})) << words;
    }
}

TEST_F(SearchTableTest, ScriptsWithoutSpacesAreFoundInTheMiddleToo) {
    const PhotoId chinese = add("a.jpg", noted("新娘王小明的妹妹"));
    const PhotoId thai = add("b.jpg", noted("ช่อดอกไม้เจ้าสาว"));
    const PhotoId japanese = add("c.jpg", noted("夜会巻きのピン"));
    EXPECT_EQ(found({.words = "明"}), std::vector{chinese});
    EXPECT_EQ(found({.words = "小明"}), std::vector{chinese});
    EXPECT_EQ(found({.words = "王小明的"}), std::vector{chinese});
    EXPECT_EQ(found({.words = "เจ้าสาว"}), std::vector{thai});
    EXPECT_EQ(found({.words = "ピン"}), std::vector{japanese});
    EXPECT_TRUE(found({.words = "明小"}).empty());
}

TEST_F(SearchTableTest, AFileNameIsFoundAsItIsWritten) {
    const PhotoId photo = add("IMG_0012 (left).jpg");
    add("IMG_0112.jpg");
    for (const char* words : {"IMG_0012", "img_001", "0012", "(left)", "left"}) {
        EXPECT_EQ(found({.words = words}), std::vector{photo}) << words;
    }
}

TEST_F(SearchTableTest, WhatTheRecordsRoundAPhotoSayFindsIt) {
    Recipe recipe;
    recipe.parting = "side, above her left brow";
    recipe.build.push_back({"Pin the coil at the nape", 4, {{"grip", "walnut brown", 6, true}}});
    library().recipes().save(example.look, recipe, at("2026-11-07T12:00"));
    Sitting trial = library().sittings().find(example.trial).value();
    trial.note = "wants to see both sides";
    library().sittings().change(trial);
    Tags in_look;
    in_look.look = example.look;
    Tags in_sitting;
    in_sitting.sitting = example.trial;
    const PhotoId worn = add("a.jpg", in_look);
    const PhotoId sat = add("b.jpg", in_sitting);
    add("c.jpg");
    const std::vector both{sat, worn};
    EXPECT_EQ(found({.words = "okonjo mira"}), both);
    EXPECT_EQ(found({.words = "granary"}), both);
    EXPECT_EQ(found({.words = "vale"}), both);
    EXPECT_EQ(found({.words = "twisted"}), std::vector{worn});
    EXPECT_EQ(found({.words = "walnut brow"}), std::vector{worn});
    EXPECT_EQ(found({.words = "trial"}), std::vector{sat});
    EXPECT_EQ(found({.words = "2026-11-07"}), std::vector{sat});
    EXPECT_EQ(found({.words = "both b.jpg mira"}), std::vector{sat});
    recipe.build.clear();
    library().recipes().save(example.look, recipe, at("2026-11-07T13:00"));
    EXPECT_TRUE(found({.words = "walnut"}).empty()) << "only the newest revision counts";
}

TEST_F(SearchTableTest, WhoIsShownFindsThePhoto) {
    const ClientId noor = library().clients().add(client_called("Noor Vale"));
    Tags shows;
    shows.shown = {noor};
    const PhotoId photo = add("a.jpg", shows);
    EXPECT_EQ(found({.words = "noor"}), std::vector{photo});
    EXPECT_EQ(found({.client = noor}), std::vector{photo});
}

// Each of her photos is asked for the second word, rather than all that have it for her photos.
TEST_F(SearchTableTest, AFewPhotosAreFoundByAWordThatManyOthersHave) {
    Tags hers, another;
    for (int i = 0; i < 3000; ++i) {
        const ClientId client =
            library().clients().add(client_called("Noor Vale 1" + std::to_string(i)));
        another.shown = {client};
    }
    add("b.jpg", another);
    hers.shown = {library().clients().add(client_called("Sefa Marrow 17"))};
    const std::vector photo{add("a.jpg", hers)};
    for (const char* words : {"sefa 17", "1 sefa", "marrow 1 17"}) {
        EXPECT_EQ(found({.words = words}), photo) << words;
    }
    EXPECT_TRUE(found({.words = "sefa 18"}).empty());
    EXPECT_EQ(library().search().found_texts(photo, "1 sefa").at(0),
              (std::vector<FoundText>{
                  {WordsOf::client, {{"Sefa", true}, {" Marrow ", false}, {"17", true}}}}));
}

TEST_F(SearchTableTest, RecordsTakenBackAreFoundNoMore) {
    const PhotoId photo = add("a.jpg", noted("comb"));
    library().history().apply({"noted", {{photo, noted("leaf")}}, {}});
    EXPECT_TRUE(found({.words = "comb"}).empty());
    library().history().undo();
    EXPECT_EQ(found({.words = "comb"}), std::vector{photo});
    EXPECT_TRUE(found({.words = "leaf"}).empty());
    library().history().redo();
    EXPECT_EQ(found({.words = "leaf"}), std::vector{photo});
}

TEST_F(SearchTableTest, SaysInWhichRecordTheWordsStandAndMarksThem) {
    Tags tags = noted("The comb sits low.\nNo: the comb is lost");
    tags.sitting = example.trial;
    const std::vector ids{add("a.jpg", tags), add("b.jpg")};
    const auto texts = library().search().found_texts(ids, "com mira");
    ASSERT_EQ(texts.size(), 2U);
    EXPECT_EQ(texts[0],
              (std::vector<FoundText>{
                  {WordsOf::photo, {{"The ", false}, {"comb", true}, {" sits low.", false}}},
                  {WordsOf::client, {{"Mira", true}, {" Okonjo-Lindqvist", false}}}}));
    EXPECT_TRUE(texts[1].empty());
}

TEST_F(SearchTableTest, ALongTextIsCutRoundTheFirstMatchBetweenLetters) {
    std::string note;
    for (int i = 0; i < 60; ++i) note += "é王";
    const std::vector ids{add("a.jpg", noted(note + "結" + note))};
    const auto pieces = library().search().found_texts(ids, "結").at(0).at(0).pieces;
    ASSERT_EQ(pieces.size(), 5U);
    EXPECT_EQ(pieces[0], (TextPiece{"…", false}));
    EXPECT_EQ(pieces[2], (TextPiece{"結", true}));
    EXPECT_LE(pieces[1].text.size() + pieces[3].text.size(), 100U);
    EXPECT_NE(note.find(pieces[1].text), std::string::npos);
    EXPECT_TRUE(note.starts_with(pieces[3].text));
    EXPECT_EQ(pieces[4], (TextPiece{"…", false}));
}

}  // namespace
}  // namespace quarterturn
