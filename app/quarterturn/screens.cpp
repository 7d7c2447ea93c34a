#include "app/quarterturn/screens.h"

#include <QCoreApplication>

#include "ui/all_photos/all_photos_screen.h"
#include "ui/bringing_in/bringing_in_screen.h"
#include "ui/client_record/client_record_screen.h"
#include "ui/coming_up/coming_up_screen.h"
#include "ui/consent/consent_screen.h"
#include "ui/contact_sheet/contact_sheet_screen.h"
#include "ui/keeping_safe/keeping_safe_screen.h"
#include "ui/kit_list/kit_list_screen.h"
#include "ui/pairs/pairs_screen.h"
#include "ui/portfolio_screen/portfolio_screen.h"
#include "ui/recipe/recipe_screen.h"
#include "ui/round_the_head/round_the_head_screen.h"
#include "ui/running_order/running_order_screen.h"
#include "ui/settings/settings_screen.h"
#include "ui/sign_off/sign_off_screen.h"
#include "ui/trial_against_today/trial_screen.h"
#include "ui/wedding_morning/wedding_morning_screen.h"
#include "ui/what_changed/what_changed_screen.h"

namespace quarterturn {
namespace {

template <class OneScreen>
ScreenEntry entry(Moment moment, const char* title) {
    return {moment, QCoreApplication::translate("moments", title),
            [](Session& session) -> Screen* { return new OneScreen(session); }};
}

}  // namespace

std::vector<ScreenEntry> all_screens() {
    return {
        entry<ComingUpScreen>(Moment::coming_up, QT_TRANSLATE_NOOP("moments", "What's coming up")),
        entry<BringingInScreen>(Moment::bringing_in,
                                QT_TRANSLATE_NOOP("moments", "Bringing photos in")),
        entry<RoundTheHeadScreen>(Moment::round_the_head,
                                  QT_TRANSLATE_NOOP("moments", "Going round the head")),
        entry<RecipeScreen>(Moment::recipe, QT_TRANSLATE_NOOP("moments", "The recipe")),
        entry<SignOffScreen>(Moment::sign_off, QT_TRANSLATE_NOOP("moments", "Sign-off")),
        entry<ContactSheetScreen>(Moment::contact_sheet,
                                  QT_TRANSLATE_NOOP("moments", "Contact sheet")),
        entry<KitListScreen>(Moment::kit_list, QT_TRANSLATE_NOOP("moments", "Kit list")),
        entry<RunningOrderScreen>(Moment::running_order,
                                  QT_TRANSLATE_NOOP("moments", "Running order")),
        entry<WeddingMorningScreen>(Moment::wedding_morning,
                                    QT_TRANSLATE_NOOP("moments", "The wedding morning")),
        entry<TrialScreen>(Moment::trial_against_today,
                           QT_TRANSLATE_NOOP("moments", "Trial against today")),
        entry<PairsScreen>(Moment::before_and_after,
                           QT_TRANSLATE_NOOP("moments", "Before and after")),
        entry<WhatChangedScreen>(Moment::what_changed,
                                 QT_TRANSLATE_NOOP("moments", "What changed")),
        entry<ClientRecordScreen>(Moment::client_record,
                                  QT_TRANSLATE_NOOP("moments", "Records of a client")),
        entry<ConsentScreen>(Moment::consent, QT_TRANSLATE_NOOP("moments", "Consent")),
        entry<PortfolioScreen>(Moment::portfolio, QT_TRANSLATE_NOOP("moments", "Portfolio")),
        entry<AllPhotosScreen>(Moment::all_photos,
                               QT_TRANSLATE_NOOP("moments", "Photos of everything")),
        entry<KeepingSafeScreen>(Moment::keeping_safe,
                                 QT_TRANSLATE_NOOP("moments", "Keeping it safe")),
        entry<SettingsScreen>(Moment::settings, QT_TRANSLATE_NOOP("moments", "Settings")),
    };
}

}  // namespace quarterturn
