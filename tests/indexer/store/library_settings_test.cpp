#include "indexer/store/library_settings.h"

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class LibrarySettingsTest : public testing::Test {
  protected:
    SettingsTable settings() { return example.library.settings(); }

    ExampleLibrary example;
};

TEST_F(LibrarySettingsTest, EachIsFoundByItsNameAndSaysWhatItIsFor) {
    for (const LibrarySetting& setting : library_settings) {
        ASSERT_TRUE(find_library_setting(setting.name));
        EXPECT_EQ(find_library_setting(setting.name)->meaning, setting.meaning);
        EXPECT_FALSE(setting.meaning.empty());
    }
    EXPECT_FALSE(find_library_setting("colour"));
}

TEST_F(LibrarySettingsTest, OnlyAPaperThatIsKnownCanBeSet) {
    const LibrarySetting paper = find_library_setting(paper_setting).value();
    EXPECT_EQ(reason_against(paper, "letter"), "");
    EXPECT_EQ(reason_against(paper, "b4"),
              "'b4' is no paper size. Known are a4, a3, a5 and letter.");
    EXPECT_EQ(reason_against(find_library_setting(business_name_setting).value(), "b4"), "");
}

TEST_F(LibrarySettingsTest, DaysUntilSheIsToldOfABackupAreANumberWithinBounds) {
    const LibrarySetting days = find_library_setting(backup_days_setting).value();
    for (const char* good : {"1", "30", "1000"}) EXPECT_EQ(reason_against(days, good), "");
    for (const char* bad : {"", "0", "1001", "a month"}) EXPECT_NE(reason_against(days, bad), "");
    EXPECT_EQ(backup_days(settings()), usual_backup_days);
    settings().set(backup_days_setting, "14");
    EXPECT_EQ(backup_days(settings()), 14);
}

TEST_F(LibrarySettingsTest, TheSpareMarginIsANumberWithinBounds) {
    const LibrarySetting spare = find_library_setting(spare_setting).value();
    for (const char* good : {"0", "25", "1000"}) EXPECT_EQ(reason_against(spare, good), "");
    for (const char* bad : {"", "-1", "1001", "25 %", "many"}) {
        EXPECT_EQ(reason_against(spare, bad), "'" + std::string(bad) +
                                                  "' is no spare margin: name a number from 0 to "
                                                  "1000.");
    }
    EXPECT_EQ(spare_percent(settings()), usual_spare_percent);
    settings().set(spare_setting, "35");
    EXPECT_EQ(spare_percent(settings()), 35);
}

TEST_F(LibrarySettingsTest, LookFamiliesAreTheUsualOnesUntilSheNamesHerOwn) {
    EXPECT_EQ(look_families(settings()).front(), "low ponytail");
    EXPECT_EQ(look_families(settings()).size(), usual_look_families.size());
    settings().set(families_setting, " Shell roll,, plait ,Shell roll");
    EXPECT_EQ(look_families(settings()), (std::vector<std::string>{"Shell roll", "plait"}));
    const LibrarySetting families = find_library_setting(families_setting).value();
    EXPECT_EQ(reason_against(families, "plait"), "");
    EXPECT_NE(reason_against(families, " , "), "");
}

TEST_F(LibrarySettingsTest, ThePaperIsA4UntilAnotherIsSet) {
    EXPECT_EQ(usual_paper(settings()), Paper::a4);
    settings().set(paper_setting, "letter");
    EXPECT_EQ(usual_paper(settings()), Paper::letter);
    settings().clear(paper_setting);
    EXPECT_EQ(usual_paper(settings()), Paper::a4);
    settings().set(paper_setting, "foolscap");
    EXPECT_EQ(usual_paper(settings()), Paper::a4) << "a newer version may know more sizes";
}

TEST_F(LibrarySettingsTest, TheFootOfAPageTellsWhatThereIs) {
    EXPECT_EQ(business_words(settings()), "");
    settings().set(business_line_setting, "by the water");
    EXPECT_EQ(business_words(settings()), "by the water");
    settings().set(business_name_setting, "Thistle Quay");
    EXPECT_EQ(business_words(settings()), "Thistle Quay · by the water");
    settings().set(business_line_setting, "");
    EXPECT_EQ(business_words(settings()), "Thistle Quay");
}

}  // namespace
}  // namespace quarterturn
