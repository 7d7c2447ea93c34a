#include "app/qturn/stop_on_signal.h"

#include <csignal>
#include <ctime>

namespace quarterturn {
namespace {

sigset_t stop_signals() {
    sigset_t caught;
    sigemptyset(&caught);
    sigaddset(&caught, SIGINT);
    sigaddset(&caught, SIGTERM);
    return caught;
}

// Waits until a signal comes or nobody waits for one any more.
void wait_for_signal(const std::stop_token& no_longer_needed, std::stop_source stop) {
    const sigset_t caught = stop_signals();
    const timespec a_moment{0, 50'000'000};
    while (!no_longer_needed.stop_requested()) {
        if (sigtimedwait(&caught, nullptr, &a_moment) < 0) continue;
        stop.request_stop();
        pthread_sigmask(SIG_UNBLOCK, &caught, nullptr);
    }
}

}  // namespace

StopOnSignal::StopOnSignal() {
    const sigset_t caught = stop_signals();
    pthread_sigmask(SIG_BLOCK, &caught, nullptr);
    waiter_ = std::jthread(wait_for_signal, stop_);
}

}  // namespace quarterturn
